package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * A bolt head, or nut, that pulls on the lips of a slot.
 *
 * @param name of the place
 * @param metal of the extrusion
 * @param thickness of a lip, mm
 * @param reach from the root of a lip to its free edge, mm
 * @param overlap of head and lip across the slot, on each side, mm
 * @param headLength along the slot on which the head bears, mm
 * @param beyondFirst from the head to one end of the extrusion, or half way to the next head, mm;
 *     infinite if neither is near
 * @param beyondSecond the same on the other side, mm
 * @param lips that share the pull, 1 or 2
 * @param source where this is given
 */
public record LipHold(
    String name,
    Metal metal,
    double thickness,
    double reach,
    double overlap,
    double headLength,
    double beyondFirst,
    double beyondSecond,
    int lips,
    Source source) {

  /**
   * @throws IllegalArgumentException if a size is not positive, the head overlaps more than there
   *     is lip, or there are not 1 or 2 lips
   */
  public LipHold {
    boolean sound = thickness > 0 && overlap > 0 && reach >= overlap && headLength > 0;
    sound &= beyondFirst >= 0 && beyondSecond >= 0 && lips >= 1 && lips <= 2;
    if (!sound) {
      throw new IllegalArgumentException(
          name
              + ": a lip of "
              + thickness
              + " mm that reaches "
              + reach
              + " mm was found under a head that overlaps it by "
              + overlap
              + " mm over "
              + headLength
              + " mm; expected sizes above 0, an overlap up to the reach, distances to the ends of 0"
              + " or more, and 1 or 2 lips.");
    }
  }
}
