package spanledger.jointdesign;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a member end puts on its joint, in the joint's axes, from the internal forces at the end.
 *
 * <p>Inputs s (1 at the start of the member, -1 at its end), N, V_y, V_z, T, M_y, M_z; steps P_u,
 * P_v, P_w, C_u, C_v, C_w. At the end the axes u, v, w are -x, -y, z, and the joint takes the
 * opposite of what it gives, so only what points along z changes its sign.
 */
public final class EndForcesOnJoint {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private EndForcesOnJoint() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-end-forces", "Forces of a member end on its joint");
    Reference side = p.input("s", "1 at the member's start, -1 at its end", Dimension.NONE);
    Reference axial = p.input("N", "axial force, tension positive", Dimension.FORCE);
    Reference shearY = p.input("V_y", "shear along y", Dimension.FORCE);
    Reference shearZ = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference torque = p.input("T", "torque", Dimension.MOMENT);
    Reference momentY = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Reference momentZ = p.input("M_z", "bending moment about z", Dimension.MOMENT);
    p.step("P_u", "force along u", Dimension.FORCE, axial, STATICS);
    p.step("P_v", "force along v", Dimension.FORCE, shearY, STATICS);
    p.step("P_w", "force along w", Dimension.FORCE, side.times(shearZ), STATICS);
    p.step("C_u", "moment about u", Dimension.MOMENT, torque, STATICS);
    p.step("C_v", "moment about v", Dimension.MOMENT, momentY, STATICS);
    p.step("C_w", "moment about w", Dimension.MOMENT, side.times(momentZ), STATICS);
    return p.build();
  }
}
