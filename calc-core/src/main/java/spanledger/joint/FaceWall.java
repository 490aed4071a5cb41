package spanledger.joint;

import spanledger.material.Alloy;
import spanledger.provenance.Source;

/**
 * The wall of a post or beam behind a face, between two webs, which the joint bends as a plate.
 *
 * @param alongFirst whether it runs along the first axis of the face (else the second); the webs
 *     run so, too
 * @param width clear between the webs, mm
 * @param middle of the width, from the face's origin along the other axis, mm
 * @param thickness the least of the wall and of what a slot has in its place, mm
 * @param clamped whether the webs hold its edges against turning; else they only support them
 * @param toEnd from the outermost bolt along it to the end of the extrusion, mm; infinite if the
 *     extrusion goes on
 * @param alloy of the extrusion
 * @param source where the sizes come from
 */
public record FaceWall(
    boolean alongFirst,
    double width,
    double middle,
    double thickness,
    boolean clamped,
    double toEnd,
    Alloy alloy,
    Source source) {

  /**
   * @throws IllegalArgumentException if a size is not above zero
   */
  public FaceWall {
    if (!(width > 0) || !(thickness > 0) || !(toEnd > 0)) {
      throw new IllegalArgumentException("A wall behind a face needs sizes above zero.");
    }
  }

  /** A place along the wall, mm. */
  public double along(double a, double b) {
    return alongFirst ? a : b;
  }

  /** From a place to the nearer web, mm; negative beyond it. */
  public double toWeb(double a, double b) {
    return width / 2 - Math.abs((alongFirst ? b : a) - middle);
  }
}
