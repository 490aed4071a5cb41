package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * A plate leg of a bracket at a straight line across it.
 *
 * @param name of the place
 * @param metal of the leg
 * @param thickness mm
 * @param width along the line, mm
 * @param holes sum of the diameters of holes on the line, mm
 * @param source where this is given
 */
public record PlateLeg(
    String name, Metal metal, double thickness, double width, double holes, Source source) {

  /**
   * @throws IllegalArgumentException if a size is not positive, or the holes leave nothing
   */
  public PlateLeg {
    if (!(thickness > 0) || !(holes >= 0) || !(width > holes)) {
      throw new IllegalArgumentException(
          name
              + ": a leg of "
              + thickness
              + " mm by "
              + width
              + " mm with "
              + holes
              + " mm of holes was found; expected sizes above 0 and holes that leave metal.");
    }
  }
}
