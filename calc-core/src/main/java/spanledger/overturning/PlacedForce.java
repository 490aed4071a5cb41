package spanledger.overturning;

import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A force at one place, or the resultant of a load.
 *
 * @param name what acts, and where
 * @param force global, N
 * @param couple a moment beside it, global, N·mm
 * @param place global, mm
 */
public record PlacedForce(String name, Vector force, Vector couple, Vector place)
    implements Acting {

  /**
   * Inputs of {@link TippingEdge}, then F_X, F_Y, F_Z, C_X, C_Y, C_Z, X, Y, Z; steps d, z (arms), M
   * (moment about the line, positive if it tips).
   */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /** A force alone. */
  public PlacedForce(String name, Vector force, Vector place) {
    this(name, force, Vector.ZERO, place);
  }

  private static Procedure procedure() {
    Source statics = Source.derived("Moment of a force about a line");
    Procedure.Builder p = Procedure.named("force-about-edge", "Moment of a force about the line");
    EdgeInputs edge = new EdgeInputs(p);
    Reference fx = p.input("F_X", "force along X", Dimension.FORCE);
    Reference fy = p.input("F_Y", "force along Y", Dimension.FORCE);
    Reference fz = p.input("F_Z", "force along Z", Dimension.FORCE);
    Reference cx = p.input("C_X", "moment about X", Dimension.MOMENT);
    Reference cy = p.input("C_Y", "moment about Y", Dimension.MOMENT);
    Reference cz = p.input("C_Z", "moment about Z", Dimension.MOMENT);
    Reference x = p.input("X", "place along X", Dimension.LENGTH);
    Reference y = p.input("Y", "place along Y", Dimension.LENGTH);
    Reference z = p.input("Z", "place along Z", Dimension.LENGTH);
    Reference beyond =
        p.step("d", "beyond the line", Dimension.LENGTH, edge.beyond(x, y), EdgeInputs.ARM);
    Reference above =
        p.step("z", "above the line", Dimension.LENGTH, edge.above(x, y, z), EdgeInputs.ARM);
    p.step(
        "M",
        "moment about the line, positive if it tips",
        Dimension.MOMENT,
        edge.outward(fx, fy)
            .times(above)
            .minus(fz.times(beyond))
            .plus(edge.rise().times(edge.lengthways(fx, fy)).times(beyond))
            .plus(edge.lengthways(cx, cy))
            .plus(edge.rise().times(cz)),
        statics);
    return p.build();
  }

  /** Its moment about a line, N·mm, positive if it tips. */
  double about(TippingEdge edge) {
    double[] values =
        COMPILED.run(
            EdgeInputs.of(
                edge,
                force.x(),
                force.y(),
                force.z(),
                couple.x(),
                couple.y(),
                couple.z(),
                place.x(),
                place.y(),
                place.z()));
    return values[COMPILED.slot("M")];
  }

  @Override
  public double tipping(TippingEdge edge, double sway) {
    return Math.max(0, about(edge));
  }
}
