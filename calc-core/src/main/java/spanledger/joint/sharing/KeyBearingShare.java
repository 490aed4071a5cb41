package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Bearing of a key on the flanks of its slot at one of its two bearing points, from the movement of
 * the member's part in the face.
 *
 * <p>Inputs y, z (of the middle of the key), α (of the slot), a (of the bearing point along the
 * slot from the middle), g (clearance), k (at the point), u_y, u_z, φ_x; steps y_p, z_p, d_n, B,
 * F_y, F_z, T_b.
 */
public final class KeyBearingShare {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private KeyBearingShare() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("key-bearing-share", "Bearing of a key on the flanks of its slot");
    Reference y = p.input("y", "place of the middle of the key", Dimension.LENGTH);
    Reference z = p.input("z", "place of the middle of the key", Dimension.LENGTH);
    Reference angle = p.input("α", "angle of the slot from y towards z", Dimension.NONE);
    Reference arm = p.input("a", "bearing point along the slot", Dimension.LENGTH);
    Reference gap = p.input("g", "clearance of a flank", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference stiffness = FaceInputs.stiffness(p, "k", "stiffness of the bearing point");
    Reference uy = p.input("u_y", "shift of the member along y", Dimension.LENGTH);
    Reference uz = p.input("u_z", "shift of the member along z", Dimension.LENGTH);
    Reference turn = p.input("φ_x", "turn of the member about x", Dimension.NONE);
    Reference yp =
        p.step(
            "y_p",
            "place of the bearing point",
            Dimension.LENGTH,
            y.plus(arm.times(cos(angle))),
            SharingSources.RIGID_FACE);
    Reference zp =
        p.step(
            "z_p",
            "place of the bearing point",
            Dimension.LENGTH,
            z.plus(arm.times(sin(angle))),
            SharingSources.RIGID_FACE);
    Reference across =
        p.step(
            "d_n",
            "shift there across the slot, to the left of its direction",
            Dimension.LENGTH,
            uz.plus(turn.times(yp))
                .times(cos(angle))
                .minus(uy.minus(turn.times(zp)).times(sin(angle))),
            SharingSources.RIGID_FACE);
    Reference bearing =
        p.step(
            "B",
            "bearing, positive on the left flank; none within the clearance",
            Dimension.FORCE,
            stiffness.times(
                max(across.minus(gap), constant(0, Dimension.LENGTH))
                    .minus(max(across.negated().minus(gap), constant(0, Dimension.LENGTH)))),
            SharingSources.RIGID_FACE);
    Reference fy =
        p.step(
            "F_y",
            "its share along y",
            Dimension.FORCE,
            bearing.times(sin(angle)).negated(),
            SharingSources.STATICS);
    Reference fz =
        p.step(
            "F_z",
            "its share along z",
            Dimension.FORCE,
            bearing.times(cos(angle)),
            SharingSources.STATICS);
    p.step(
        "T_b",
        "its part of the torsion about the reference point",
        Dimension.MOMENT,
        yp.times(fz).minus(zp.times(fy)),
        SharingSources.STATICS);
    return p.build();
  }
}
