package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * How hard the parts press at one place, from the movement of the member's part off the face.
 *
 * <p>Inputs y, z, k_c, u_x, φ_y, φ_z; steps d_x, C, F_x (along x, never positive), M_yb, M_zb.
 */
public final class ContactShare {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private ContactShare() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("contact-share", "Pressing at a place of a face");
    Reference y = p.input("y", "place of the contact", Dimension.LENGTH);
    Reference z = p.input("z", "place of the contact", Dimension.LENGTH);
    Reference stiffness = FaceInputs.stiffness(p, "k_c", "stiffness of the contact");
    Reference lift = FaceInputs.lift(p, y, z);
    Reference pressing =
        p.step(
            "C",
            "pressing there, none where the face gapes",
            Dimension.FORCE,
            max(stiffness.times(lift).negated(), constant(0, Dimension.FORCE)),
            SharingSources.RIGID_FACE);
    Reference alongX =
        p.step(
            "F_x", "the same along x", Dimension.FORCE, pressing.negated(), SharingSources.STATICS);
    FaceInputs.moments(p, y, z, alongX);
    return p.build();
  }
}
