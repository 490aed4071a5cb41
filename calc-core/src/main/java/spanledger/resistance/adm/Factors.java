package spanledger.resistance.adm;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * A resistance factor and a safety factor: a nominal strength times φ over Ω is what may be used.
 * Design by load and resistance factors has Ω = 1, design by allowable strength has φ = 1.
 *
 * @param resistance φ
 * @param safety Ω
 */
record Factors(Reference resistance, Reference safety) {

  /** Declares φ and Ω with a mark for the limit state, for example {@code φ_u}. */
  static Factors inputs(Procedure.Builder p, String mark, String of) {
    return new Factors(
        p.input("φ_" + mark, "resistance factor, " + of, Dimension.NONE, Domain.FRACTION),
        p.input(
            "Ω_" + mark,
            "safety factor, " + of,
            Dimension.NONE,
            new Domain(1, true, Double.POSITIVE_INFINITY)));
  }

  Expression applied(Expression nominal) {
    return resistance.times(nominal).over(safety);
  }
}
