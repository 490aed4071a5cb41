package spanledger.joint.sharing;

import spanledger.provenance.Source;

/**
 * How the shear of a bolt grows with its deformation: {@code R = R_ult (1 - exp(-rate Δ))^exponent}
 * up to the greatest deformation.
 *
 * @param greatestDeformation at which a bolt fails, mm
 * @param rate 1/mm
 * @param exponent from above 0 to 1
 * @param source a test of these bolts in these plates
 */
public record LoadDeformation(
    double greatestDeformation, double rate, double exponent, Source source) {

  /**
   * The published law for 3/4 in high-strength bolts in steel plates: rate 10 per inch, exponent
   * 0.55, greatest deformation 0.34 in. In aluminium plates holes give more; nothing published is
   * known to the authors.
   */
  public static final LoadDeformation STEEL_BOLTS_IN_STEEL =
      new LoadDeformation(0.34 * 25.4, 10 / 25.4, 0.55, BoltLoadDeformation.LAW);

  public LoadDeformation {
    if (!(greatestDeformation > 0) || !(rate > 0) || !(exponent > 0 && exponent <= 1)) {
      throw new IllegalArgumentException(
          "A load-deformation law needs a greatest deformation and a rate above zero and an"
              + " exponent from above 0 to 1, found "
              + greatestDeformation
              + ", "
              + rate
              + " and "
              + exponent
              + ".");
    }
  }
}
