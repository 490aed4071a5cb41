package spanledger.material;

import java.util.OptionalDouble;
import spanledger.provenance.Source;

/**
 * What the Aluminum Design Manual and AS/NZS 1664.1 ask of an alloy beyond {@link Alloy}.
 *
 * @param designation of the alloy's row
 * @param thickness of the alloy's row
 * @param compressiveYield F_cy, MPa
 * @param aged whether the temper is one of T5 to T9, so that strengths fall along the steeper lines
 * @param tensionCoefficient k_t, for notches
 * @param compressionCoefficient k_c of AS/NZS 1664.1, for the knee of the stress-strain curve
 * @param weldedCompressiveYield F_cy within 1 in. of a weld, MPa, if known
 * @param source where they come from
 */
public record TemperStrengths(
    String designation,
    ThicknessRange thickness,
    double compressiveYield,
    boolean aged,
    double tensionCoefficient,
    double compressionCoefficient,
    OptionalDouble weldedCompressiveYield,
    Source source) {

  /**
   * @throws IllegalArgumentException if a strength is not positive or a coefficient below 1
   */
  public TemperStrengths {
    if (!(compressiveYield > 0) || !(weldedCompressiveYield.orElse(1) > 0)) {
      throw new IllegalArgumentException(
          "The compressive yield strength of " + designation + " must be positive.");
    }
    if (!(tensionCoefficient >= 1) || !(compressionCoefficient >= 1)) {
      throw new IllegalArgumentException(
          "The coefficients of " + designation + " must be at least 1.");
    }
  }
}
