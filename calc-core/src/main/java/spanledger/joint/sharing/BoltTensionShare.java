package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Tension of one bolt from the movement of the member's part off the face, without prying.
 *
 * <p>Inputs y, z, k_x, u_x, φ_y, φ_z; steps d_x, F_t, M_yb, M_zb.
 */
public final class BoltTensionShare {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltTensionShare() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("bolt-tension-share", "Tension of a bolt in a group");
    Reference y = p.input("y", "place of the bolt", Dimension.LENGTH);
    Reference z = p.input("z", "place of the bolt", Dimension.LENGTH);
    Reference stiffness = FaceInputs.stiffness(p, "k_x", "stiffness of the bolt along x");
    Reference lift = FaceInputs.lift(p, y, z);
    Reference tension =
        p.step(
            "F_t",
            "tension of the bolt, which cannot push",
            Dimension.FORCE,
            max(stiffness.times(lift), constant(0, Dimension.FORCE)),
            SharingSources.RIGID_FACE);
    FaceInputs.moments(p, y, z, tension);
    return p.build();
  }
}
