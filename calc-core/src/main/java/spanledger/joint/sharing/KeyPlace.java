package spanledger.joint.sharing;

/**
 * A key or tooth that lies in a slot of the face: it slides along the slot and bears on its flanks.
 *
 * <p>It bears at two points of its length, {@code length/√3} apart, each with half the stiffness:
 * so placed they resist shift and turn as a bed along the whole length does while one flank bears,
 * and with less arm than a bed once both do.
 *
 * @param name for messages and tables
 * @param y place of its middle in the face, mm
 * @param z place of its middle in the face, mm
 * @param slotAngle from +y to the slot, turning towards +z, rad
 * @param length that bears along the slot, mm; 0 for a tooth that bears at one point
 * @param clearance shift across the slot before a flank bears, either way, mm
 * @param stiffness against a shift across the slot once it bears, N/mm
 */
public record KeyPlace(
    String name,
    double y,
    double z,
    double slotAngle,
    double length,
    double clearance,
    double stiffness) {

  public KeyPlace {
    Stiffnesses.requirePlace("Key " + name, y, z);
    Stiffnesses.require("Key " + name, stiffness);
    if (!(length >= 0) || !(clearance >= 0) || !Double.isFinite(slotAngle + length + clearance)) {
      throw new IllegalArgumentException(
          "Key "
              + name
              + ": its length and clearance must be zero or more, found "
              + length
              + " mm and "
              + clearance
              + " mm.");
    }
  }

  /**
   * Distance of a bearing point from the middle of the key, along the slot, mm: two points there
   * turn with the stiffness of an even bearing, k L²/12.
   */
  public double bearingArm() {
    return length / Math.sqrt(12);
  }
}
