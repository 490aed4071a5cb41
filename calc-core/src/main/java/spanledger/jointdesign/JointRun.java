package spanledger.jointdesign;

import java.util.List;
import spanledger.envelope.Instance;
import spanledger.joint.JointType;
import spanledger.resistance.member.Working;

/**
 * A joint under one combination.
 *
 * @param end where it is
 * @param joint its joint
 * @param instance the combination, with the place of its moving load
 * @param forces a run of {@link EndForcesOnJoint}, or of {@link FootForces}
 * @param faces its faces
 */
public record JointRun(
    JointPlace end, JointType joint, Instance instance, Working forces, List<FaceRun> faces) {

  public JointRun {
    faces = List.copyOf(faces);
  }

  /** Where it is, its joint and the combination, which tell it from all others. */
  public String name() {
    return end.name() + ", " + joint.name() + ", under " + instance.words();
  }
}
