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
 * is global Y. Roll turns y towards z about x.
 *
 * <p>Inputs: node places X_1..Z_2, arms a_X1..a_Z2 (from node to member end), roll β. Steps end in
 * L and the direction cosines x_X, x_Y, x_Z, y_X ... z_Z.
 */
public final class SegmentGeometry {

  /** Below this level length per length a segment counts as upright. */
  private static final double UPRIGHT = 1e-6;

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
    Condition sloping = greater(level, number(UPRIGHT));
    Expression[] y0 = {
      choose(sloping, x[1].negated().over(level), number(0)),
      choose(sloping, x[0].over(level), number(1)),
      number(0)
    };
    Reference y0x = cosine(p, "y0_X", y0[0]);
    Reference y0y = cosine(p, "y0_Y", y0[1]);
    Reference z0x = cosine(p, "z0_X", x[2].times(y0y).negated());
    Reference z0y = cosine(p, "z0_Y", x[2].times(y0x));
    Reference z0z = cosine(p, "z0_Z", x[0].times(y0y).minus(x[1].times(y0x)));
    Reference c =
        p.step("cosβ", "cosine of roll", Dimension.NONE, cos(roll), MechanicsSources.GEOMETRY);
    Reference s =
        p.step("sinβ", "sine of roll", Dimension.NONE, sin(roll), MechanicsSources.GEOMETRY);
    cosine(p, "y_X", y0x.times(c).plus(z0x.times(s)));
    cosine(p, "y_Y", y0y.times(c).plus(z0y.times(s)));
    cosine(p, "y_Z", z0z.times(s));
    cosine(p, "z_X", z0x.times(c).minus(y0x.times(s)));
    cosine(p, "z_Y", z0y.times(c).minus(y0y.times(s)));
    cosine(p, "z_Z", z0z.times(c));
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
