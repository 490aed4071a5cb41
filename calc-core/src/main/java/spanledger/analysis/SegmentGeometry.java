package spanledger.analysis;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sin;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Condition;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Length and axes of a segment.
 *
 * <p>Local x runs from the first to the second end. Without roll, z lies in the upright plane
 * through the segment and points up, and y completes a right-handed set; for an upright segment y
 * is as near to global Y as it can be across the segment. Roll turns y towards z about x; the
 * section's principal axes are turned further by α, so that y and z bend apart from each other.
 *
 * <p>Inputs: node places X_1..Z_2, arms a_X1..a_Z2 (from node to member end), roll β, α. Steps end
 * in L and the direction cosines x_X, x_Y, x_Z, y_X ... z_Z.
 */
public final class SegmentGeometry {

  /**
   * Below this level length per length a segment counts as upright: a leg a millimetre per metre
   * out of plumb keeps the axes of a plumb one, however its coordinates were rounded.
   */
  private static final double UPRIGHT = 1e-3;

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private SegmentGeometry() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("segment-geometry", "Length and axes of a segment");
    Reference[] first = new Reference[3];
    Reference[] second = new Reference[3];
    Reference[] armFirst = new Reference[3];
    Reference[] armSecond = new Reference[3];
    String[] axes = {"X", "Y", "Z"};
    for (int i = 0; i < 3; i++) {
      first[i] = p.input(axes[i] + "_1", axes[i] + " of the first node", Dimension.LENGTH);
    }
    for (int i = 0; i < 3; i++) {
      second[i] = p.input(axes[i] + "_2", axes[i] + " of the second node", Dimension.LENGTH);
    }
    for (int i = 0; i < 3; i++) {
      armFirst[i] =
          p.input("a_" + axes[i] + "1", "arm at the first node along " + axes[i], Dimension.LENGTH);
    }
    for (int i = 0; i < 3; i++) {
      armSecond[i] =
          p.input(
              "a_" + axes[i] + "2", "arm at the second node along " + axes[i], Dimension.LENGTH);
    }
    Reference roll = p.input("β", "roll about the segment's axis", Dimension.NONE);
    Reference principal =
        p.input("α", "turn of the section's principal axes from its outline's", Dimension.NONE);
    Reference[] delta = new Reference[3];
    for (int i = 0; i < 3; i++) {
      delta[i] =
          p.step(
              "Δ_" + axes[i],
              "run along " + axes[i],
              Dimension.LENGTH,
              second[i].plus(armSecond[i]).minus(first[i]).minus(armFirst[i]),
              MechanicsSources.GEOMETRY);
    }
    Reference length =
        p.step(
            "L",
            "length between member ends",
            Dimension.LENGTH,
            sqrt(delta[0].pow(2).plus(delta[1].pow(2)).plus(delta[2].pow(2))),
            MechanicsSources.GEOMETRY);
    Reference[] x = new Reference[3];
    for (int i = 0; i < 3; i++) {
      x[i] = cosine(p, "x_" + axes[i], delta[i].over(length));
    }
    Reference level =
        p.step(
            "c_h",
            "level run per length",
            Dimension.NONE,
            sqrt(x[0].pow(2).plus(x[1].pow(2))),
            MechanicsSources.GEOMETRY);
    Reference across =
        p.step(
            "c_v",
            "run across global Y per length",
            Dimension.NONE,
            sqrt(x[0].pow(2).plus(x[2].pow(2))),
            MechanicsSources.GEOMETRY);
    Condition sloping = greater(level, number(UPRIGHT));
    Reference[] z0 = {
      cosine(
          p,
          "z0_X",
          choose(sloping, x[2].times(x[0]).over(level).negated(), x[2].over(across).negated())),
      cosine(p, "z0_Y", choose(sloping, x[2].times(x[1]).over(level).negated(), number(0))),
      cosine(p, "z0_Z", choose(sloping, level, x[0].over(across)))
    };
    Reference[] y0 = new Reference[3];
    for (int i = 0; i < 3; i++) {
      int next = (i + 1) % 3;
      int last = (i + 2) % 3;
      y0[i] = cosine(p, "y0_" + axes[i], z0[next].times(x[last]).minus(z0[last].times(x[next])));
    }
    Reference turn =
        p.step(
            "β_p",
            "roll of the principal axes",
            Dimension.NONE,
            roll.plus(principal),
            MechanicsSources.GEOMETRY);
    Reference c =
        p.step("c_β", "cosine of the turn", Dimension.NONE, cos(turn), MechanicsSources.GEOMETRY);
    Reference s =
        p.step("s_β", "sine of the turn", Dimension.NONE, sin(turn), MechanicsSources.GEOMETRY);
    for (int i = 0; i < 3; i++) {
      cosine(p, "y_" + axes[i], y0[i].times(c).plus(z0[i].times(s)));
    }
    for (int i = 0; i < 3; i++) {
      cosine(p, "z_" + axes[i], z0[i].times(c).minus(y0[i].times(s)));
    }
    return p.build();
  }

  private static Reference cosine(Procedure.Builder p, String symbol, Expression formula) {
    return p.step(
        symbol,
        "cosine between the segment's "
            + symbol.charAt(0)
            + (symbol.contains("0") ? " (without roll)" : "")
            + " and global "
            + symbol.charAt(symbol.length() - 1),
        Dimension.NONE,
        formula,
        MechanicsSources.GEOMETRY);
  }
}
