package spanledger.analysis;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The moments of a segment load about the segment's start: m_k = ∫ q(x) x^k dx for k = 0 to 3.
 *
 * <p>They carry everything that the end forces need to know of a load: m_0 is its size, m_1 fixes
 * the bearing reactions, m_2 and m_3 the end turns. Both definitions end in the same four steps,
 * for a load in its own direction.
 */
public final class LoadMoments {

  /** For a force P at distance a. */
  public static final Procedure POINT = point();

  /** For a load from q_1 at a to q_2 at b. */
  public static final Procedure DISTRIBUTED = distributed();

  private LoadMoments() {}

  private static Procedure point() {
    Procedure.Builder p = Procedure.named("point-load-moments", "Moments of a point load");
    Reference force = p.input("P", "force", Dimension.FORCE);
    Reference at = p.input("a", "distance from the start", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    moment(p, 0, force);
    moment(p, 1, force.times(at));
    moment(p, 2, force.times(at.pow(2)));
    moment(p, 3, force.times(at.pow(3)));
    return p.build();
  }

  private static Procedure distributed() {
    Procedure.Builder p =
        Procedure.named("distributed-load-moments", "Moments of a distributed load");
    Reference from = p.input("q_1", "intensity where it begins", Dimension.LINE_LOAD);
    Reference to = p.input("q_2", "intensity where it ends", Dimension.LINE_LOAD);
    Reference a = p.input("a", "where it begins", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference b = p.input("b", "where it ends", Dimension.LENGTH, Domain.POSITIVE);
    Reference slope =
        p.step(
            "q'",
            "change of intensity per length",
            Dimension.STRESS,
            to.minus(from).over(b.minus(a)),
            MechanicsSources.STATICS);
    Reference base =
        p.step(
            "q_0",
            "intensity carried back to the start",
            Dimension.LINE_LOAD,
            from.minus(slope.times(a)),
            MechanicsSources.STATICS);
    for (int k = 0; k <= 3; k++) {
      Expression uniform = base.times(b.pow(k + 1).minus(a.pow(k + 1))).over(k + 1);
      Expression rising = slope.times(b.pow(k + 2).minus(a.pow(k + 2))).over(k + 2);
      moment(p, k, uniform.plus(rising));
    }
    return p.build();
  }

  private static void moment(Procedure.Builder p, int order, Expression formula) {
    p.step(
        "m_" + order,
        "load moment of order " + order,
        Dimension.whole(order, 1, 0, 0),
        formula,
        MechanicsSources.STATICS);
  }
}
