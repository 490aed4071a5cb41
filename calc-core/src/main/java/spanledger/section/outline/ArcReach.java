package spanledger.section.outline;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.sin;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * How far an arc reaches from an axis: up to the top of its circle if it passes it, else up to the
 * nearer of its ends.
 */
public final class ArcReach {

  private static final Source CIRCLE = Source.derived("Farthest point of a circle from a line");

  /** Inputs r, φ, n_y, n_z, y_m, z_m, y_c, z_c, α; steps v_m, h, k, b, v_+, v_-. */
  public static final Procedure PROCEDURE = procedure();

  private ArcReach() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("arc-reach", "Reach of an arc from an axis");
    Reference radius = p.input("r", "radius, negative when turning right", Dimension.LENGTH);
    Reference turn = p.input("φ", "turn of the arc, left positive", Dimension.NONE);
    Reference ny = p.input("n_y", "y part of the normal right of the chord", Dimension.NONE);
    Reference nz = p.input("n_z", "z part of the normal right of the chord", Dimension.NONE);
    Reference ym = p.input("y_m", "y of the centre of the arc", Dimension.LENGTH);
    Reference zm = p.input("z_m", "z of the centre of the arc", Dimension.LENGTH);
    AxisDistance.Axis axis = AxisDistance.Axis.given(p);
    Reference centre =
        p.step(
            "v_m",
            "centre of the arc from the axis",
            Dimension.LENGTH,
            axis.distance(ym, zm),
            AxisDistance.LINE);
    Reference middle =
        p.step(
            "h",
            "middle of the arc from its centre, across the axis",
            Dimension.LENGTH,
            axis.across(radius.times(ny), radius.times(nz)),
            AxisDistance.LINE);
    Reference limit =
        p.step(
            "k",
            "least h with which the arc passes the top of its circle",
            Dimension.LENGTH,
            abs(radius).times(cos(turn.over(2))),
            CIRCLE);
    Reference side =
        p.step(
            "b",
            "half of the chord across the axis",
            Dimension.LENGTH,
            sqrt(max(radius.pow(2).minus(middle.pow(2)), constant(0, Dimension.AREA)))
                .times(abs(sin(turn.over(2)))),
            CIRCLE);
    Expression size = abs(radius);
    Expression end = middle.times(cos(turn.over(2)));
    p.step(
        "v_+",
        "farthest reach on the positive side",
        Dimension.LENGTH,
        centre.plus(choose(atLeast(middle, limit), size, end.plus(side))),
        CIRCLE);
    p.step(
        "v_-",
        "farthest reach on the negative side",
        Dimension.LENGTH,
        centre.plus(choose(atMost(middle, limit.negated()), size.negated(), end.minus(side))),
        CIRCLE);
    return p.build();
  }
}
