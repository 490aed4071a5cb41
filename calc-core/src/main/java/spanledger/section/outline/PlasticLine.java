package spanledger.section.outline;

import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** A point of the plastic neutral axis: the centroid shifted across the axis. */
public final class PlasticLine {

  /** Inputs y_c, z_c, α, v_0; steps y_n, z_n. */
  public static final Procedure PROCEDURE = procedure();

  private PlasticLine() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("plastic-line", "Plastic neutral axis");
    AxisDistance.Axis axis = AxisDistance.Axis.given(p);
    Reference offset =
        p.input("v_0", "distance to the left of the axis through the centroid", Dimension.LENGTH);
    p.step(
        "y_n",
        "y of a point of the neutral axis",
        Dimension.LENGTH,
        axis.y().minus(offset.times(sin(axis.angle()))),
        AxisDistance.LINE);
    p.step(
        "z_n",
        "z of that point",
        Dimension.LENGTH,
        axis.z().plus(offset.times(cos(axis.angle()))),
        AxisDistance.LINE);
    return p.build();
  }
}
