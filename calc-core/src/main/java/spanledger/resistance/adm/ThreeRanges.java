package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The form that all strengths of the family share: yielding up to a first slenderness, a straight
 * line up to a second, and above it the elastic or the post-buckling strength.
 *
 * @param slenderness what the strength falls with
 * @param plateau the strength of stocky elements, a stress
 * @param intercept B
 * @param slope D times the factor on slenderness
 * @param second where the line ends
 * @param beyond the strength above it
 */
public record ThreeRanges(
    Reference slenderness,
    Expression plateau,
    Expression intercept,
    Expression slope,
    Expression second,
    Expression beyond) {

  /** The symbols and words of the steps. */
  public record Names(String first, String second, String strength, String of) {}

  /**
   * Writes both limits and the strength.
   *
   * @return the strength
   */
  public Reference write(Procedure.Builder p, Names names, Source source) {
    Reference first =
        p.step(
            names.first(),
            "slenderness up to which it yields, " + names.of(),
            Dimension.NONE,
            intercept.minus(plateau).over(slope),
            source);
    Reference last =
        p.step(
            names.second(),
            "slenderness from which it buckles elastically, " + names.of(),
            Dimension.NONE,
            second,
            source);
    return p.step(
        names.strength(),
        "strength, " + names.of(),
        Dimension.STRESS,
        choose(
            atMost(slenderness, first),
            plateau,
            choose(less(slenderness, last), intercept.minus(slope.times(slenderness)), beyond)),
        source);
  }
}
