package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * A hammer head, or a nut, in a slot.
 *
 * @param name of the place
 * @param slotMetal of the extrusion
 * @param length along the slot on which it bears, mm
 * @param overlap with a lip across the slot, on each side, mm
 * @param opening between the lips, mm
 * @param height of the head, mm
 * @param neck width across the slot of the shank or neck that the head stands on, mm
 * @param source where this is given
 */
public record HeadInSlot(
    String name,
    Metal slotMetal,
    double length,
    double overlap,
    double opening,
    double height,
    double neck,
    Source source) {

  /**
   * @throws IllegalArgumentException if a size is not positive, or the neck is wider than the
   *     opening
   */
  public HeadInSlot {
    boolean sound = length > 0 && overlap > 0 && height > 0 && neck > 0 && opening >= neck;
    if (!sound) {
      throw new IllegalArgumentException(
          name
              + ": sizes of a head in a slot must be above 0 and its neck not wider than the opening;"
              + " found a neck of "
              + neck
              + " mm in an opening of "
              + opening
              + " mm.");
    }
  }
}
