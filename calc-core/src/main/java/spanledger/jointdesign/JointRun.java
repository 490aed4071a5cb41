package spanledger.jointdesign;

import java.util.ArrayList;
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
 * @param bound how its brackets are taken to share
 * @param brackets its brackets; empty if one carries all
 */
public record JointRun(
    JointPlace end,
    JointType joint,
    Instance instance,
    Working forces,
    List<FaceRun> faces,
    SharingBound bound,
    List<BracketRun> brackets) {

  public JointRun {
    faces = List.copyOf(faces);
    brackets = List.copyOf(brackets);
  }

  /** A joint of one bracket, or a foot. */
  JointRun(
      JointPlace end, JointType joint, Instance instance, Working forces, List<FaceRun> faces) {
    this(end, joint, instance, forces, faces, SharingBound.ALONE, List.of());
  }

  /** The combination, and how brackets are taken to share if there are several. */
  public String words() {
    return bound == SharingBound.ALONE ? instance.words() : instance.words() + "; " + bound.words();
  }

  /** What leads from the forces of the member end to those of its faces, in order. */
  public List<Working> shares() {
    List<Working> all = new ArrayList<>(List.of(forces));
    brackets.forEach(bracket -> all.add(bracket.share()));
    brackets.forEach(bracket -> all.addAll(bracket.moves()));
    return all;
  }

  /** Where it is, its joint and the combination, which tell it from all others. */
  public String name() {
    return end.name() + ", " + joint.name() + ", under " + words();
  }
}
