package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;

/** Shares the axial force and the two moments. */
final class OffFaceSharing {

  private static final FaceModel BOLT = new FaceModel(BoltTensionShare.PROCEDURE);
  private static final FaceModel CONTACT = new FaceModel(ContactShare.PROCEDURE);

  private static final String[] WORDS = {"an axial force", "a moment about y", "a moment about z"};

  private OffFaceSharing() {}

  /** The body of a face for {@link #load}. */
  static FaceBalance balance(JointGeometry joint) {
    return new FaceBalance(springs(joint), joint.reach(), WORDS);
  }

  /** Bolts, which only pull, and contacts, which only press. */
  static List<SpringLine> springs(JointGeometry joint) {
    List<SpringLine> springs = new ArrayList<>();
    for (BoltPlace bolt : joint.bolts()) {
      springs.add(
          new SpringLine(BOLT.perMovement("d_x", inputs(bolt)), bolt.tensionStiffness(), true, 0));
    }
    for (ContactPoint contact : joint.contacts()) {
      double[] lift = CONTACT.perMovement("d_x", inputs(contact));
      double[] pressing = {-lift[0], -lift[1], -lift[2]};
      springs.add(new SpringLine(pressing, contact.stiffness(), true, 0));
    }
    return springs;
  }

  static double[] load(FaceForces forces) {
    return new double[] {forces.axial(), forces.momentY(), forces.momentZ()};
  }

  static JointSharing.OffFace of(JointGeometry joint, FaceForces forces) {
    double[] movement = balance(joint).movement(load(forces));
    List<BoltForce> bolts = new ArrayList<>();
    for (BoltPlace bolt : joint.bolts()) {
      double tension = BOLT.run(InFaceSharing.withMovement(inputs(bolt), movement)).apply("F_t");
      bolts.add(new BoltForce(bolt, 0, 0, 0, tension));
    }
    List<ContactForce> contacts = new ArrayList<>();
    for (ContactPoint contact : joint.contacts()) {
      double force = CONTACT.run(InFaceSharing.withMovement(inputs(contact), movement)).apply("C");
      contacts.add(new ContactForce(contact, force));
    }
    return new JointSharing.OffFace(bolts, contacts, FaceMovement.offFace(movement));
  }

  private static double[] inputs(BoltPlace bolt) {
    return new double[] {bolt.y(), bolt.z(), bolt.tensionStiffness()};
  }

  private static double[] inputs(ContactPoint contact) {
    return new double[] {contact.y(), contact.z(), contact.stiffness()};
  }
}
