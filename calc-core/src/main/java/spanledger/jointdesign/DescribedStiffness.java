package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.stiffness.JointStiffness;

/**
 * How stiff a described joint is: its faces one after the other, each by the springs by which the
 * check shares its forces.
 */
public final class DescribedStiffness {

  private DescribedStiffness() {}

  /**
   * In the joint's axes u, v, w. Both bounds hold for the faces alone; arms between them are left
   * out.
   *
   * @throws IllegalArgumentException if a bolt lies where its leg cannot bend
   */
  public static JointStiffness of(BracketJoint joint) {
    Optional<JointStiffness> all = Optional.empty();
    for (JointFace face : joint.faces()) {
      JointStiffness own =
          JointStiffness.of(geometry(joint, face), JointStiffness.OTHER).onAxesOf(face.normal());
      all = Optional.of(all.map(before -> before.inSeries(own)).orElse(own));
    }
    return all.orElseThrow();
  }

  private static JointGeometry geometry(BracketJoint joint, JointFace face) {
    String where = joint.name() + ", " + face.name();
    JointGeometry body = FaceGeometry.of(face, where, joint.source()).geometry();
    double shear = new FaceStiffness(face, where, joint.source()).shear().value();
    List<BoltPlace> bolts = new ArrayList<>();
    for (BoltPlace bolt : body.bolts()) {
      bolts.add(
          new BoltPlace(bolt.name(), bolt.y(), bolt.z(), shear, shear, bolt.tensionStiffness()));
    }
    return new JointGeometry(bolts, body.keys(), body.contacts());
  }
}
