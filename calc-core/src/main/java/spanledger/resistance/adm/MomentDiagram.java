package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The factor for the distribution of moment between lateral restraints. */
public final class MomentDiagram {

  private MomentDiagram() {}

  /**
   * Writes inputs M_y_max, M_y_A, M_y_B, M_y_C, C_b_dec and the step C_b.
   *
   * @return C_b
   */
  public static Reference write(Procedure.Builder p, Source source) {
    Reference most =
        p.input(
            "M_y_max",
            "greatest size of M_y between restraints",
            Dimension.MOMENT,
            Domain.NOT_NEGATIVE);
    Reference first =
        p.input("M_y_A", "M_y at a quarter of the way between restraints", Dimension.MOMENT);
    Reference second = p.input("M_y_B", "M_y half-way between restraints", Dimension.MOMENT);
    Reference third =
        p.input("M_y_C", "M_y at three quarters between restraints", Dimension.MOMENT);
    Reference declared =
        p.input(
            "C_b_dec",
            "declared factor for the distribution of moment, 0 if there is none",
            Dimension.NONE,
            Domain.NOT_NEGATIVE);
    Reference sum =
        p.step(
            "M_sum",
            "weighted sum of the moments",
            Dimension.MOMENT,
            most.times(2.5)
                .plus(abs(first).times(3))
                .plus(abs(second).times(4))
                .plus(abs(third).times(3)),
            source);
    return p.step(
        "C_b",
        "factor for the distribution of moment",
        Dimension.NONE,
        choose(
            greater(declared, number(0)),
            declared,
            choose(
                greater(sum, sum.times(0)), max(number(1), most.times(12.5).over(sum)), number(1))),
        source);
  }
}
