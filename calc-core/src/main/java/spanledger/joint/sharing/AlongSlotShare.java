package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Share of one bolt in the shear along the slots, where keys carry all shear across them.
 *
 * <p>Inputs y, z, k_y, k_z, α, K_s (the sum of k_s over all bolts), V_y, V_z; steps k_s, V_s, F_s,
 * F_y, F_z, F_v, T_b.
 */
public final class AlongSlotShare {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private AlongSlotShare() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("along-slot-share", "Shear of a bolt along the slot of the keys");
    Reference y = p.input("y", "place of the bolt", Dimension.LENGTH);
    Reference z = p.input("z", "place of the bolt", Dimension.LENGTH);
    Reference ky = FaceInputs.stiffness(p, "k_y", "stiffness of the bolt along y");
    Reference kz = FaceInputs.stiffness(p, "k_z", "stiffness of the bolt along z");
    Reference angle = p.input("α", "angle of the slot from y towards z", Dimension.NONE);
    Reference total =
        p.input(
            "K_s",
            "sum of the stiffnesses of all bolts along the slot",
            Dimension.LINE_LOAD,
            Domain.POSITIVE);
    Reference vy = p.input("V_y", "shear along y", Dimension.FORCE);
    Reference vz = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference along =
        p.step(
            "k_s",
            "stiffness of the bolt along the slot",
            Dimension.LINE_LOAD,
            ky.times(cos(angle).pow(2)).plus(kz.times(sin(angle).pow(2))),
            SharingSources.RIGID_FACE);
    Reference shear =
        p.step(
            "V_s",
            "shear along the slot",
            Dimension.FORCE,
            vy.times(cos(angle)).plus(vz.times(sin(angle))),
            SharingSources.STATICS);
    Reference share =
        p.step(
            "F_s",
            "the bolt's share of it",
            Dimension.FORCE,
            shear.times(along).over(total),
            SharingSources.RIGID_FACE);
    Reference fy =
        p.step(
            "F_y",
            "shear of the bolt along y",
            Dimension.FORCE,
            share.times(cos(angle)),
            SharingSources.STATICS);
    Reference fz =
        p.step(
            "F_z",
            "shear of the bolt along z",
            Dimension.FORCE,
            share.times(sin(angle)),
            SharingSources.STATICS);
    p.step("F_v", "shear of the bolt", Dimension.FORCE, abs(share), SharingSources.STATICS);
    p.step(
        "T_b",
        "its part of the torsion about the reference point",
        Dimension.MOMENT,
        y.times(fz).minus(z.times(fy)),
        SharingSources.STATICS);
    return p.build();
  }
}
