package spanledger.jointdesign;

import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.sin;

import java.util.List;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a structure puts on a foot, along the foot's own axes, about its node: the opposite of what
 * the support does to the structure.
 *
 * <p>Inputs R_X, R_Y, R_Z, S_X, S_Y, S_Z (force and moment of the support on the structure, global
 * axes), ψ, α, δ (turn of the foot, slope of the ground, direction in which it falls; {@link
 * spanledger.joint.FootLie}). Steps P_u (off the ground positive), P_v, P_w, C_u, C_v, C_w, before
 * them the same along the fall of the ground.
 */
public final class FootForces {

  /** The forces and moments of the support. */
  public static final List<String> OF_SUPPORT = List.of("R_X", "R_Y", "R_Z", "S_X", "S_Y", "S_Z");

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private FootForces() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("foot-forces", "Forces of the structure on a foot");
    Reference turn =
        p.input("ψ", "turn of the foot about the square to the ground, rad", Dimension.NONE);
    Reference slope = p.input("α", "slope of the ground, rad", Dimension.NONE);
    Reference falls =
        p.input("δ", "direction in which the ground falls, rad from X", Dimension.NONE);
    for (boolean force : new boolean[] {true, false}) {
      Dimension dimension = force ? Dimension.FORCE : Dimension.MOMENT;
      String of = force ? "R" : "S";
      String to = force ? "P" : "C";
      String kind = force ? "force" : "moment";
      String way = force ? "along" : "about";
      Reference x = p.input(of + "_X", kind + " of the support " + way + " X", dimension);
      Reference y = p.input(of + "_Y", kind + " of the support " + way + " Y", dimension);
      Reference z = p.input(of + "_Z", kind + " of the support " + way + " Z", dimension);
      Reference level =
          p.step(
              to + "_f",
              kind + " on the foot " + way + " the level direction of the fall",
              dimension,
              x.times(cos(falls)).plus(y.times(sin(falls))).negated(),
              STATICS);
      Reference across =
          p.step(
              to + "_k",
              kind + " on the foot " + way + " the level line of the ground",
              dimension,
              x.times(sin(falls)).minus(y.times(cos(falls))),
              STATICS);
      Reference down =
          p.step(
              to + "_d",
              kind + " on the foot " + way + " the line down the ground",
              dimension,
              level.times(cos(slope)).plus(z.times(sin(slope))),
              STATICS);
      p.step(
          to + "_u",
          kind + " on the foot " + way + " the square to the ground, upwards",
          dimension,
          level.times(sin(slope)).minus(z.times(cos(slope))),
          STATICS);
      p.step(
          to + "_v",
          kind + " on the foot " + way + " its first side",
          dimension,
          down.times(cos(turn.minus(falls))).plus(across.times(sin(turn.minus(falls)))),
          STATICS);
      p.step(
          to + "_w",
          kind + " on the foot " + way + " its second side",
          dimension,
          across.times(cos(turn.minus(falls))).minus(down.times(sin(turn.minus(falls)))),
          STATICS);
    }
    return p.build();
  }
}
