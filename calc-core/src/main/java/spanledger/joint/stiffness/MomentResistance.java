package spanledger.joint.stiffness;

import spanledger.joint.sharing.BoltForce;
import spanledger.joint.sharing.ContactForce;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.JointSharing;
import spanledger.joint.sharing.KeyForce;
import spanledger.joint.sharing.SharedForces;

/**
 * The forces of given proportion that a joint carries before the first of its parts reaches its
 * resistance, by the model that shares them. Keys are taken as bearing. Resistances for tension
 * hold with prying; how shear and tension act together is for the check of the bolt.
 *
 * @param forces at which the first part is used up
 * @param factor these forces per forces given
 * @param governing name of the part
 * @param mode how it is used up
 */
public record MomentResistance(FaceForces forces, double factor, String governing, String mode) {

  /**
   * What single parts carry; infinite where another check looks at it.
   *
   * @param boltTension of a bolt with its plate or lips, N
   * @param boltShear of a bolt with its bearing, N
   * @param keyHalf of half a key in bearing and shear, N
   * @param contact of a contact place, N
   */
  public record PartLimits(double boltTension, double boltShear, double keyHalf, double contact) {}

  private record Use(double use, String part, String mode) {}

  /**
   * Finds the resistance.
   *
   * @param pattern any forces of the wanted proportion
   * @throws IllegalArgumentException if the forces are none, or no part that carries them has a
   *     limit
   */
  public static MomentResistance of(JointGeometry joint, FaceForces pattern, PartLimits limits) {
    JointGeometry bearing = joint.bearing();
    SharedForces shared = JointSharing.of(bearing, pattern);
    Use most = new Use(0, "", "");
    for (BoltForce bolt : shared.bolts()) {
      String name = bolt.bolt().name();
      most = greater(most, bolt.tension() / limits.boltTension(), name, "in tension");
      most = greater(most, bolt.shear() / limits.boltShear(), name, "in shear");
    }
    for (KeyForce key : shared.keys()) {
      double use = key.greatestOnHalf() / limits.keyHalf();
      most = greater(most, use, key.key().name(), "bearing");
    }
    for (ContactForce contact : shared.contacts()) {
      double use = contact.force() / limits.contact();
      most = greater(most, use, contact.contact().name(), "pressed");
    }
    if (!(most.use > 0)) {
      throw new IllegalArgumentException(
          "No part that carries these forces has a limit; give the resistance of one.");
    }
    double factor = 1 / most.use;
    return new MomentResistance(pattern.times(factor), factor, most.part, most.mode);
  }

  private static Use greater(Use most, double use, String part, String mode) {
    return use > most.use ? new Use(use, part, mode) : most;
  }
}
