package spanledger.joint;

import spanledger.material.Alloy;
import spanledger.provenance.Source;

/**
 * The two lips of an extrusion's slot on which the heads of the bolts bear.
 *
 * @param alongFirst whether the slot runs along the first axis of the face (else the second)
 * @param reach from the root of a lip to its free edge, mm
 * @param thickness of a lip, mm
 * @param opening between the lips, mm
 * @param toEnd from the outermost bolt along the slot to the end of the extrusion, mm; infinite if
 *     the extrusion goes on
 * @param alloy of the extrusion
 * @param source where the sizes come from
 */
public record SlotLips(
    boolean alongFirst,
    double reach,
    double thickness,
    double opening,
    double toEnd,
    Alloy alloy,
    Source source) {

  /**
   * @throws IllegalArgumentException if a size is not above zero
   */
  public SlotLips {
    if (!(reach > 0) || !(thickness > 0) || !(opening > 0) || !(toEnd > 0)) {
      throw new IllegalArgumentException("Slot lips need sizes above zero.");
    }
  }
}
