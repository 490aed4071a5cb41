package spanledger.vibration;

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
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** How loads become masses: weight / g, of what acts downward. */
public final class LoadMassProcedures {

  private static final Source WEIGHT = Source.derived("Mass = weight / g, of what acts downward");

  /**
   * Of a distributed load on a piece: inputs q_1, q_2, a, b (as the load has them), D_Z, x_1, x_2
   * (the piece, from the segment's start), ψ and g; the last step is m.
   */
  public static final Procedure SPREAD = spread();

  /**
   * Of a point load on a piece, by the lever rule: inputs P, a, D_Z, x_1, x_2, ψ and g; the last
   * steps are m_1 and m_2, at the piece's nodes.
   */
  public static final Procedure POINT = point();

  /** Of a load on a node: inputs F_Z, ψ and g; step m. */
  public static final Procedure ON_NODE = onNode();

  private LoadMassProcedures() {}

  private static Procedure spread() {
    Procedure.Builder p = Procedure.named("spread-load-mass", "Masses of distributed loads");
    Reference from = p.input("q_1", "intensity where it begins", Dimension.LINE_LOAD);
    Reference to = p.input("q_2", "intensity where it ends", Dimension.LINE_LOAD);
    Reference a = p.input("a", "where it begins", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference b = p.input("b", "where it ends", Dimension.LENGTH, Domain.POSITIVE);
    Reference up = upward(p);
    Reference[] piece = piece(p);
    Expression share = share(p);
    Reference begin =
        step(p, "a_p", "where it begins on the piece", Dimension.LENGTH, max(a, piece[0]));
    Reference end =
        step(p, "b_p", "where it ends on the piece", Dimension.LENGTH, min(b, piece[1]));
    Expression middle = begin.plus(end).over(2).minus(a);
    Reference mean =
        step(
            p,
            "q_m",
            "intensity in the middle between",
            Dimension.LINE_LOAD,
            from.plus(to.minus(from).times(middle).over(b.minus(a))));
    Expression loaded = max(end.minus(begin), constant(0, Dimension.LENGTH));
    step(
        p,
        "m",
        "mass on the piece",
        Dimension.MASS,
        downward(up.times(mean)).times(loaded).times(share));
    return p.build();
  }

  private static Procedure point() {
    Procedure.Builder p = Procedure.named("point-load-mass", "Masses of point loads");
    Reference force = p.input("P", "force", Dimension.FORCE);
    Reference a = p.input("a", "distance from the start", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference up = upward(p);
    Reference[] piece = piece(p);
    Expression share = share(p);
    Reference mass =
        step(p, "m", "mass of the load", Dimension.MASS, downward(up.times(force)).times(share));
    Expression along = a.minus(piece[0]).over(piece[1].minus(piece[0]));
    Reference far =
        step(
            p,
            "m_2",
            "mass at the piece's second node",
            Dimension.MASS,
            mass.times(choose(greater(along, number(1)), number(1), along)));
    step(p, "m_1", "mass at its first node", Dimension.MASS, mass.minus(far));
    return p.build();
  }

  private static Procedure onNode() {
    Procedure.Builder p = Procedure.named("node-load-mass", "Masses of loads on nodes");
    Reference force = p.input("F_Z", "force along Z", Dimension.FORCE);
    Expression share = share(p);
    step(p, "m", "mass of the load", Dimension.MASS, downward(force).times(share));
    return p.build();
  }

  private static Reference upward(Procedure.Builder p) {
    return p.input("D_Z", "part of the load along Z", Dimension.NONE);
  }

  private static Reference[] piece(Procedure.Builder p) {
    return new Reference[] {
      p.input("x_1", "where the piece begins", Dimension.LENGTH, Domain.NOT_NEGATIVE),
      p.input("x_2", "where the piece ends", Dimension.LENGTH, Domain.POSITIVE)
    };
  }

  private static Expression share(Procedure.Builder p) {
    Reference share =
        p.input("ψ", "share of the load that swings along", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference g =
        p.input("g", "acceleration of free fall", Dimension.FORCE_PER_MASS, Domain.POSITIVE);
    return share.over(g);
  }

  /** What acts upward has no mass. */
  private static Expression downward(Expression upward) {
    return max(upward.negated(), constant(0, upward.dimension()));
  }

  private static Reference step(
      Procedure.Builder p, String symbol, String words, Dimension dimension, Expression formula) {
    return p.step(symbol, words, dimension, formula, WEIGHT);
  }
}
