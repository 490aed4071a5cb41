package spanledger.joint;

import java.util.List;
import java.util.Optional;
import spanledger.material.Alloy;

/**
 * Keys or teeth of a face that bear on the sides of a slot; they press and do not pull.
 *
 * @param places of their middles in the face, at least one
 * @param bearsAlongFirst whether they bear along the first axis of the face (else the second);
 *     along the other they slide
 * @param depth to which they stand in the slot and bear, mm
 * @param length along the slot, mm
 * @param thickness across the slot, which is sheared, mm
 * @param clearance across the slot before a flank bears, either way, mm
 * @param side depth of the slot's side on which they press, mm, if it is known
 * @param alloy of the keys
 * @param slotAlloy of what they bear on
 */
public record FaceKeys(
    List<FacePlace> places,
    boolean bearsAlongFirst,
    double depth,
    double length,
    double thickness,
    double clearance,
    Optional<Double> side,
    Alloy alloy,
    Alloy slotAlloy) {

  /**
   * @throws IllegalArgumentException if there is none, a size is not above zero, or the clearance
   *     is negative
   */
  public FaceKeys {
    places = List.copyOf(places);
    boolean sized =
        side.orElse(1.0) > 0 && depth > 0 && length > 0 && thickness > 0 && clearance >= 0;
    if (places.isEmpty() || !sized) {
      throw new IllegalArgumentException("A face needs a key, with sizes above zero.");
    }
  }

  /**
   * Depth of the slot's side on which they press, mm: as given, or the thickness of the lips beside
   * it; empty if neither is known.
   */
  public Optional<Double> sideDepth(Optional<SlotLips> lips) {
    return side.or(
        () -> lips.filter(own -> own.alongFirst() != bearsAlongFirst).map(SlotLips::thickness));
  }
}
