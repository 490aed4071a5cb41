package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;

/**
 * What the strength of round walls is worked out from.
 *
 * @param yield F_cy
 * @param modulus E
 * @param intercept B_t
 * @param slope D_t
 * @param end C_t
 */
public record RoundConstants(
    Reference yield, Reference modulus, Reference intercept, Reference slope, Reference end) {

  /** Declares them as inputs F_cy, E, B_t, D_t, C_t. */
  public static RoundConstants inputs(Procedure.Builder p) {
    return new RoundConstants(
        Symbols.compressionYield(p),
        Symbols.modulus(p),
        Symbols.stress(p, "B_t", "intercept, round walls, compression"),
        Symbols.stress(p, "D_t", "slope, round walls, compression"),
        Symbols.ratio(p, "C_t", "end of the line, round walls, compression"));
  }

  /** The elastic buckling stress of the wall. */
  public Expression elastic(Reference slenderness) {
    Expression curved = number(1).plus(sqrt(slenderness).over(35)).pow(2);
    return pi().pow(2).times(modulus).over(slenderness.times(16).times(curved));
  }

  /** The straight line of compression, over the root of the slenderness. */
  public Expression line(Reference slenderness) {
    return intercept.minus(slope.times(sqrt(slenderness)));
  }
}
