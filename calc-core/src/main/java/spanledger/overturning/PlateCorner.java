package spanledger.overturning;

import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.sin;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.joint.FootLie;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A corner of the base plate of a foot, where a structure on one foot, or on feet in one line, may
 * tip.
 */
public final class PlateCorner {

  /**
   * Inputs X_0, Y_0, Z_0 (the foot's node), a, b, h (the corner from it along the plate's first and
   * second side and square to it), ψ, α, δ (how the foot lies, {@link FootLie}); steps to X, Y, Z.
   */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private final Node foot;
  private final Node corner;
  private final List<Double> own;

  private PlateCorner(Node foot, Node corner, List<Double> own) {
    this.foot = foot;
    this.corner = corner;
    this.own = List.copyOf(own);
  }

  /**
   * The four corners of a plate.
   *
   * @param foot the supported node
   * @param lengthX along its first side, mm
   * @param lengthY along its second side, mm
   * @param offset its middle from the node, along its sides and square to it, mm
   * @param lie how it lies on the ground
   */
  public static List<PlateCorner> of(
      Node foot, double lengthX, double lengthY, Vector offset, FootLie lie) {
    List<PlateCorner> corners = new ArrayList<>();
    int[][] signs = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    for (int[] sign : signs) {
      List<Double> own =
          List.of(
              offset.x() + sign[0] * lengthX / 2,
              offset.y() + sign[1] * lengthY / 2,
              offset.z(),
              lie.turn(),
              lie.slope(),
              lie.falls());
      double[] inputs = new double[9];
      inputs[0] = foot.place().x();
      inputs[1] = foot.place().y();
      inputs[2] = foot.place().z();
      for (int i = 0; i < own.size(); i++) {
        inputs[3 + i] = own.get(i);
      }
      double[] values = COMPILED.run(inputs);
      Vector place =
          new Vector(
              values[COMPILED.slot("X")], values[COMPILED.slot("Y")], values[COMPILED.slot("Z")]);
      String name = foot.name() + ", plate corner " + (corners.size() + 1);
      corners.add(new PlateCorner(foot, new Node(name, place), own));
    }
    return corners;
  }

  private static Procedure procedure() {
    Source geometry = Source.derived("Geometry of the plate (docs/theory/overturning.md)");
    Procedure.Builder p = Procedure.named("plate-corner", "Corner of the base plate of a foot");
    Reference x = p.input("X_0", "foot along X", Dimension.LENGTH);
    Reference y = p.input("Y_0", "foot along Y", Dimension.LENGTH);
    Reference z = p.input("Z_0", "foot along Z", Dimension.LENGTH);
    Reference first = p.input("a", "corner along the first side", Dimension.LENGTH);
    Reference second = p.input("b", "corner along the second side", Dimension.LENGTH);
    Reference high = p.input("h", "corner square to the plate, upwards", Dimension.LENGTH);
    Reference turn = p.input("ψ", "turn of the foot, rad", Dimension.NONE);
    Reference slope = p.input("α", "slope of the ground, rad", Dimension.NONE);
    Reference falls =
        p.input("δ", "direction in which the ground falls, rad from X", Dimension.NONE);
    Reference down =
        p.step(
            "d",
            "down the ground",
            Dimension.LENGTH,
            first.times(cos(turn.minus(falls))).minus(second.times(sin(turn.minus(falls)))),
            geometry);
    Reference across =
        p.step(
            "k",
            "along the level line of the ground",
            Dimension.LENGTH,
            first.times(sin(turn.minus(falls))).plus(second.times(cos(turn.minus(falls)))),
            geometry);
    Reference level =
        p.step(
            "f",
            "along the level direction of the fall",
            Dimension.LENGTH,
            down.times(cos(slope)).plus(high.times(sin(slope))),
            geometry);
    p.step(
        "X",
        "corner along X",
        Dimension.LENGTH,
        x.plus(level.times(cos(falls))).minus(across.times(sin(falls))),
        geometry);
    p.step(
        "Y",
        "corner along Y",
        Dimension.LENGTH,
        y.plus(level.times(sin(falls))).plus(across.times(cos(falls))),
        geometry);
    p.step(
        "Z",
        "corner along Z",
        Dimension.LENGTH,
        z.plus(high.times(cos(slope))).minus(down.times(sin(slope))),
        geometry);
    return p.build();
  }

  /** The foot. */
  public Node foot() {
    return foot;
  }

  /** The corner as a place with a name. */
  public Node corner() {
    return corner;
  }

  /** The inputs a, b, h, ψ, α, δ of {@link #PROCEDURE}. */
  public List<Double> own() {
    return own;
  }
}
