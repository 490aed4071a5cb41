package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The moment that one specimen resists: the mean of the readings at which it holds its moment, not
 * more than the greatest; or the greatest, where it goes on rising.
 *
 * <p>Inputs M_max, n_h (readings at which it is held, 0 if it is not), S_h (sum of their moments);
 * steps M_h, M_R.
 */
public final class TestHeld {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private TestHeld() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("test-held-moment", "Moment that a specimen resists");
    Reference greatest = p.input("M_max", "greatest moment", Dimension.MOMENT, Domain.POSITIVE);
    Reference count =
        p.input("n_h", "readings at which it is held", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference sum = p.input("S_h", "sum of their moments", Dimension.MOMENT);
    Reference mean =
        p.step(
            "M_h",
            "their mean; 0 without any",
            Dimension.MOMENT,
            sum.over(max(count, number(1))),
            TestLine.LEAST_SQUARES);
    p.step(
        "M_R",
        "moment that the specimen resists",
        Dimension.MOMENT,
        choose(greater(count, number(0)), min(greatest, mean), greatest),
        TestLine.LEAST_SQUARES);
    return p.build();
  }
}
