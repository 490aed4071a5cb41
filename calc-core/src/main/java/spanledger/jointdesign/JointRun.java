package spanledger.jointdesign;

import java.util.List;
import spanledger.envelope.Instance;
import spanledger.joint.JointType;
import spanledger.resistance.member.Working;

/**
 * A joint under one combination.
 *
 * @param end the member end
 * @param joint its joint
 * @param instance the combination, with the place of its moving load
 * @param forces a run of {@link EndForcesOnJoint}
 * @param faces its faces
 */
public record JointRun(
    JointEnd end, JointType joint, Instance instance, Working forces, List<FaceRun> faces) {

  public JointRun {
    faces = List.copyOf(faces);
  }

  /** The member end and the combination, which tell it from all others. */
  public String name() {
    return end.name() + " under " + instance.words();
  }
}
