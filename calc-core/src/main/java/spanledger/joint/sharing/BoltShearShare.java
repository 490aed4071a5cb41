package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Shear of one bolt from the movement of the member's part in the face.
 *
 * <p>Inputs y, z, k_y, k_z, u_y, u_z, φ_x; steps d_y, d_z, F_y, F_z, F_v and T_b, the bolt's part
 * of the torsion about the reference point.
 */
public final class BoltShearShare {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltShearShare() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("bolt-shear-share", "Shear of a bolt in a group");
    Reference y = p.input("y", "place of the bolt", Dimension.LENGTH);
    Reference z = p.input("z", "place of the bolt", Dimension.LENGTH);
    Reference ky = FaceInputs.stiffness(p, "k_y", "stiffness of the bolt along y");
    Reference kz = FaceInputs.stiffness(p, "k_z", "stiffness of the bolt along z");
    Reference uy = p.input("u_y", "shift of the member along y", Dimension.LENGTH);
    Reference uz = p.input("u_z", "shift of the member along z", Dimension.LENGTH);
    Reference turn = p.input("φ_x", "turn of the member about x", Dimension.NONE);
    Reference dy =
        p.step(
            "d_y",
            "shift at the bolt along y",
            Dimension.LENGTH,
            uy.minus(turn.times(z)),
            SharingSources.RIGID_FACE);
    Reference dz =
        p.step(
            "d_z",
            "shift at the bolt along z",
            Dimension.LENGTH,
            uz.plus(turn.times(y)),
            SharingSources.RIGID_FACE);
    Reference fy =
        p.step(
            "F_y",
            "shear of the bolt along y",
            Dimension.FORCE,
            ky.times(dy),
            SharingSources.RIGID_FACE);
    Reference fz =
        p.step(
            "F_z",
            "shear of the bolt along z",
            Dimension.FORCE,
            kz.times(dz),
            SharingSources.RIGID_FACE);
    p.step(
        "F_v",
        "shear of the bolt",
        Dimension.FORCE,
        sqrt(fy.pow(2).plus(fz.pow(2))),
        SharingSources.STATICS);
    p.step(
        "T_b",
        "its part of the torsion about the reference point",
        Dimension.MOMENT,
        y.times(fz).minus(z.times(fy)),
        SharingSources.STATICS);
    return p.build();
  }
}
