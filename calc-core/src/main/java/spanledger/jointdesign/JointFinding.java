package spanledger.jointdesign;

import spanledger.envelope.Governing;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;

/**
 * The worst of one check of one face of a joint.
 *
 * @param run the joint under the combination that governs
 * @param face the face
 * @param check the run of the check that governs
 * @param use the step of it
 * @param governing the combination and the cut at the member end; its value is the use
 */
public record JointFinding(
    JointRun run, FaceRun face, JointCheck check, JointUse use, Governing governing) {

  /** The part that governs, for example {@code edge-north, start, post, bolt 2}. */
  public String part() {
    return check.working().label();
  }
}
