package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * A key or tooth that presses on the side of a slot or groove.
 *
 * @param name of the place
 * @param keyMetal of the key
 * @param slotMetal of the slot
 * @param depth to which the key stands in the slot, mm
 * @param wall depth of the slot's side that the key can press on, mm
 * @param length along the slot, mm
 * @param thickness of the key at its root, along the force, mm
 * @param source where this is given
 */
public record KeyInSlot(
    String name,
    Metal keyMetal,
    Metal slotMetal,
    double depth,
    double wall,
    double length,
    double thickness,
    Source source) {

  /**
   * @throws IllegalArgumentException if a size is not positive
   */
  public KeyInSlot {
    if (!(depth > 0) || !(wall > 0) || !(length > 0) || !(thickness > 0)) {
      throw new IllegalArgumentException(name + ": sizes of a key must be above 0.");
    }
  }
}
