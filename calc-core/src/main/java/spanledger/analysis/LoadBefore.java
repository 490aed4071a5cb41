package spanledger.analysis;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * What the part of a load before a cut does at the cut: g_n = ∫ q(s) (x - s)^n ds over s &lt; x,
 * for n = 0 (shear), 1 (moment) and 3 (deflection). For a load in its own direction.
 */
public final class LoadBefore {

  /** For a force P at distance a, cut at x. A force exactly at the cut counts as beyond it. */
  public static final Procedure POINT = point();

  /** For a load from q_1 at a to q_2 at b, cut at x. */
  public static final Procedure DISTRIBUTED = distributed();

  private LoadBefore() {}

  private static Procedure point() {
    Procedure.Builder p = Procedure.named("point-load-before", "Point load before a cut");
    Reference force = p.input("P", "force", Dimension.FORCE);
    Reference at = p.input("a", "distance from the start", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference cut = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference past = past(p, "c", cut, at);
    effect(p, 0, choose(greater(cut, at), force, force.times(number(0))));
    effect(p, 1, force.times(past));
    effect(p, 3, force.times(past.pow(3)));
    return p.build();
  }

  private static Procedure distributed() {
    Procedure.Builder p =
        Procedure.named("distributed-load-before", "Distributed load before a cut");
    Reference from = p.input("q_1", "intensity where it begins", Dimension.LINE_LOAD);
    Reference to = p.input("q_2", "intensity where it ends", Dimension.LINE_LOAD);
    Reference a = p.input("a", "where it begins", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference b = p.input("b", "where it ends", Dimension.LENGTH, Domain.POSITIVE);
    Reference cut = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference slope =
        p.step(
            "q'",
            "change of intensity per length",
            Dimension.STRESS,
            to.minus(from).over(b.minus(a)),
            MechanicsSources.STATICS);
    Reference pastStart = past(p, "c_a", cut, a);
    Reference pastEnd = past(p, "c_b", cut, b);
    // A load without end from a, less the same carried on beyond b.
    for (int n : new int[] {0, 1, 3}) {
      effect(
          p,
          n,
          from.times(pastStart.pow(n + 1))
              .minus(to.times(pastEnd.pow(n + 1)))
              .over(n + 1)
              .plus(
                  slope
                      .times(pastStart.pow(n + 2).minus(pastEnd.pow(n + 2)))
                      .over((n + 1) * (n + 2))));
    }
    return p.build();
  }

  private static Reference past(Procedure.Builder p, String symbol, Reference cut, Reference at) {
    return p.step(
        symbol,
        "distance of the cut past " + at.symbol(),
        Dimension.LENGTH,
        max(cut.minus(at), at.times(number(0))),
        MechanicsSources.STATICS);
  }

  private static void effect(Procedure.Builder p, int order, Expression formula) {
    p.step(
        "g_" + order,
        "effect of order " + order + " at the cut",
        Dimension.whole(order, 1, 0, 0),
        formula,
        MechanicsSources.STATICS);
  }
}
