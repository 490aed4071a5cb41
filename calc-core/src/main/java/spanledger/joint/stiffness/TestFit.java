package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The lines of a test beside one of its readings. Inputs φ, M (the reading), φ_0, k_φ, n_h, M_h
 * (the lines, see {@link TestLine} and {@link TestHeld}); steps M_f, e.
 */
public final class TestFit {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private TestFit() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("test-fit", "Lines beside the readings");
    Reference rotation = p.input("φ", "rotation read", Dimension.NONE);
    Reference moment = p.input("M", "moment read", Dimension.MOMENT);
    Reference play = p.input("φ_0", "play", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference stiffness = p.input("k_φ", "stiffness", Dimension.MOMENT);
    Reference count =
        p.input("n_h", "readings at which the moment is held", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference held = p.input("M_h", "moment held", Dimension.MOMENT);
    Expression rising = max(stiffness.times(rotation.minus(play)), constant(0, Dimension.MOMENT));
    Reference line =
        p.step(
            "M_f",
            "moment of the lines",
            Dimension.MOMENT,
            choose(greater(count, number(0)), min(rising, held), rising),
            TestLine.LEAST_SQUARES);
    p.step("e", "what they miss", Dimension.MOMENT, moment.minus(line), TestLine.LEAST_SQUARES);
    return p.build();
  }
}
