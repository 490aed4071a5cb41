package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What the strength of flat elements under uniform compression is worked out from.
 *
 * @param yield F_cy
 * @param modulus E
 * @param aged whether the temper is one of T5 to T9
 * @param intercept B_p
 * @param slope D_p
 * @param end C_p
 */
public record FlatConstants(
    Reference yield,
    Reference modulus,
    Reference aged,
    Reference intercept,
    Reference slope,
    Reference end) {

  /** Declares them as inputs F_cy, E, aged, B_p, D_p, C_p. */
  public static FlatConstants inputs(Procedure.Builder p) {
    return new FlatConstants(
        Symbols.compressionYield(p),
        Symbols.modulus(p),
        Symbols.aged(p),
        Symbols.stress(p, "B_p", "intercept, uniform compression"),
        Symbols.stress(p, "D_p", "slope, uniform compression"),
        Symbols.ratio(p, "C_p", "end of the line, uniform compression"));
  }

  /**
   * The strength left after buckling.
   *
   * @param k1 where the line ends, as part of its intercept
   * @param k2 the factor on the strength beyond
   */
  public record AfterBuckling(Reference k1, Reference k2) {}

  /** Writes the coefficients k_1 and k_2. */
  public AfterBuckling afterBuckling(Procedure.Builder p, Source source) {
    return new AfterBuckling(
        p.step(
            "k_1",
            "end of the line as part of its intercept",
            Dimension.NONE,
            choose(Symbols.isAged(aged), number(0.35), number(0.5)),
            source),
        p.step(
            "k_2",
            "factor on the strength after buckling",
            Dimension.NONE,
            choose(Symbols.isAged(aged), number(2.27), number(2.04)),
            source));
  }

  /**
   * The strength of an element that keeps strength after buckling.
   *
   * @param slenderness b/t
   * @param factor on b/t for the edges held
   */
  public ThreeRanges ranges(Reference slenderness, Expression factor, AfterBuckling after) {
    Expression steepness = factor.times(slope);
    return new ThreeRanges(
        slenderness,
        yield,
        intercept,
        steepness,
        after.k1().times(intercept).over(steepness),
        after.k2().times(sqrt(intercept.times(modulus))).over(factor.times(slenderness)));
  }
}
