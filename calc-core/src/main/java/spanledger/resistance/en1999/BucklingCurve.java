package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Reference;

/** The steps from slenderness to the reduction factor; the same in every mode. */
final class BucklingCurve {

  /** α and λ_0 of a curve. */
  record Inputs(Expression imperfection, Expression plateau) {}

  /** Slenderness and reduction. */
  record Result(Reference slenderness, Reference reduction) {}

  private BucklingCurve() {}

  static Inputs inputs(Steps p) {
    return new Inputs(
        p.number("α", "imperfection factor of the buckling curve"),
        p.number("λ_0", "slenderness up to which nothing is lost"));
  }

  /**
   * Adds the steps λ, φ and χ.
   *
   * @param squash the load or moment without buckling, characteristic
   * @param critical the elastic critical one
   */
  static Result steps(
      Steps p, Inputs curve, Expression squash, Expression critical, String clause) {
    Reference slenderness =
        p.step("λ", "relative slenderness", sqrt(squash.over(critical)), Clause.of(clause));
    Reference phi =
        p.step(
            "φ",
            "auxiliary value",
            number(1)
                .plus(curve.imperfection().times(slenderness.minus(curve.plateau())))
                .plus(slenderness.pow(2))
                .over(2),
            Clause.of(clause));
    Reference chi =
        p.step(
            "χ",
            "reduction factor",
            min(number(1), number(1).over(phi.plus(sqrt(phi.pow(2).minus(slenderness.pow(2)))))),
            Clause.of(clause));
    return new Result(slenderness, chi);
  }
}
