package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * A block of a plate that a group of bolts may tear out.
 *
 * @param name of the place
 * @param metal of the plate
 * @param netTension area of the torn side, less holes, mm²
 * @param grossTension the same without deduction, mm²
 * @param netShear area of the sheared sides, less holes, mm²
 * @param grossShear the same without deduction, mm²
 * @param eccentric whether the tension is uneven, as at the end of a beam
 * @param source where this is given
 */
public record BlockOfMetal(
    String name,
    Metal metal,
    double netTension,
    double grossTension,
    double netShear,
    double grossShear,
    boolean eccentric,
    Source source) {

  /**
   * @throws IllegalArgumentException if an area is negative, a net one is above the gross one, or
   *     there is no shear area
   */
  public BlockOfMetal {
    boolean sound = netTension >= 0 && grossTension >= netTension;
    sound &= netShear > 0 && grossShear >= netShear;
    if (!sound) {
      throw new IllegalArgumentException(
          name + ": areas of a block must not be negative, the net ones not above the gross ones.");
    }
  }
}
