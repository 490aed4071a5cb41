package spanledger.joint.sharing;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * What one bolt adds to the sums of its group in the face.
 *
 * <p>Inputs y, z, k_y, k_z; steps s_z (k_y z), s_y (k_z y) and j (k_y z² + k_z y²).
 */
public final class BoltGroupTerms {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltGroupTerms() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("bolt-group-terms", "What a bolt adds to its group");
    Reference y = p.input("y", "place of the bolt", Dimension.LENGTH);
    Reference z = p.input("z", "place of the bolt", Dimension.LENGTH);
    Reference ky = FaceInputs.stiffness(p, "k_y", "stiffness of the bolt along y");
    Reference kz = FaceInputs.stiffness(p, "k_z", "stiffness of the bolt along z");
    p.step(
        "s_z",
        "first moment of its stiffness along y",
        Dimension.FORCE,
        ky.times(z),
        SharingSources.RIGID_FACE);
    p.step(
        "s_y",
        "first moment of its stiffness along z",
        Dimension.FORCE,
        kz.times(y),
        SharingSources.RIGID_FACE);
    p.step(
        "j",
        "second moment of both",
        Dimension.MOMENT,
        ky.times(z.pow(2)).plus(kz.times(y.pow(2))),
        SharingSources.RIGID_FACE);
    return p.build();
  }
}
