package spanledger.joint.sharing;

/**
 * A bolt in a joint's face.
 *
 * @param name for messages and tables
 * @param y place in the face, mm
 * @param z place in the face, mm
 * @param shearStiffnessY against a shift of the member along y, N/mm; 0 where nothing bears, as
 *     along a slot
 * @param shearStiffnessZ the same along z, N/mm
 * @param tensionStiffness against lifting off the face, N/mm; 0 if it takes no tension
 */
public record BoltPlace(
    String name,
    double y,
    double z,
    double shearStiffnessY,
    double shearStiffnessZ,
    double tensionStiffness) {

  public BoltPlace {
    Stiffnesses.require("Bolt " + name, shearStiffnessY, shearStiffnessZ, tensionStiffness);
    Stiffnesses.requirePlace("Bolt " + name, y, z);
  }

  /** A bolt of a group whose bolts are all alike; only the ratios of stiffnesses matter there. */
  public static BoltPlace alike(String name, double y, double z) {
    return new BoltPlace(name, y, z, 1, 1, 1);
  }
}
