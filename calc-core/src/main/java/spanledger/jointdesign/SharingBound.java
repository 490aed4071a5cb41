package spanledger.jointdesign;

import java.util.List;
import spanledger.joint.BracketJoint;
import spanledger.joint.sharing.Softening;
import spanledger.joint.stiffness.JointStiffness;

/**
 * How brackets are taken to share. Springs of parts are known within a factor of three; what counts
 * is how stiff bolts and keys in the faces are beside bolts and bed off them, so both are tried and
 * the worse is kept.
 */
public enum SharingBound {
  /** One bracket carries all. */
  ALONE(1, 1, ""),
  /** In the faces a third as stiff. */
  SOFT_IN_FACES(JointStiffness.OTHER, 1, "brackets share, soft in their faces"),
  /** Off the faces a third as stiff. */
  SOFT_OFF_FACES(1, JointStiffness.OTHER, "brackets share, soft off their faces");

  private final double inFace;
  private final double offFace;
  private final String words;

  SharingBound(double inFace, double offFace, String words) {
    this.inFace = inFace;
    this.offFace = offFace;
    this.words = words;
  }

  /** How the brackets of a joint are taken to share, one after the other. */
  static List<SharingBound> of(BracketJoint joint) {
    return joint.isShared() ? List.of(SOFT_IN_FACES, SOFT_OFF_FACES) : List.of(ALONE);
  }

  Softening softening() {
    return new Softening(inFace, offFace);
  }

  /** In words; empty for a bracket alone. */
  public String words() {
    return words;
  }
}
