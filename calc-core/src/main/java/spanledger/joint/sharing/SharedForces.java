package spanledger.joint.sharing;

import java.util.List;

/**
 * The six forces at a face as its bolts, keys and bearing places carry them.
 *
 * @param forces what was shared
 * @param bolts in the order given
 * @param keys in the order given
 * @param contacts in the order given
 * @param movement of the member's part; of the keys, where these carry alone; of bolts of unit
 *     stiffness before slip. Where nothing resists a movement and nothing drives it, it is zero
 * @param unbalanced what the parts carry less what was to be shared
 * @param residual the largest unbalanced force, moments by the joint's reach, per largest shared
 */
public record SharedForces(
    FaceForces forces,
    List<BoltForce> bolts,
    List<KeyForce> keys,
    List<ContactForce> contacts,
    FaceMovement movement,
    FaceForces unbalanced,
    double residual) {

  public SharedForces {
    bolts = List.copyOf(bolts);
    keys = List.copyOf(keys);
    contacts = List.copyOf(contacts);
  }

  /** The greatest resultant shear of a bolt, N; 0 without bolts. */
  public double greatestShear() {
    return bolts.stream().mapToDouble(BoltForce::shear).max().orElse(0);
  }

  /** The greatest tension of a bolt, N; 0 without bolts. */
  public double greatestTension() {
    return bolts.stream().mapToDouble(BoltForce::tension).max().orElse(0);
  }

  /** The sum of all pressing, N. */
  public double contactForce() {
    return contacts.stream().mapToDouble(ContactForce::force).sum();
  }
}
