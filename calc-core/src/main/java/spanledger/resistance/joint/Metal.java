package spanledger.resistance.joint;

import java.util.OptionalDouble;
import spanledger.material.Alloy;
import spanledger.provenance.Source;

/**
 * What a plate, a lip or a key is made of.
 *
 * @param name for example {@code 6082-T6}
 * @param proofStrength 0.2 % proof strength f_o, MPa
 * @param ultimateStrength f_u, MPa
 * @param youngsModulus E, MPa
 * @param elongation least elongation at fracture as a ratio; empty if not known
 * @param source where the strengths come from
 */
public record Metal(
    String name,
    double proofStrength,
    double ultimateStrength,
    double youngsModulus,
    OptionalDouble elongation,
    Source source) {

  /**
   * @throws IllegalArgumentException if a strength or E is not positive, or f_u is below f_o
   */
  public Metal {
    if (!(proofStrength > 0) || !(ultimateStrength >= proofStrength) || !(youngsModulus > 0)) {
      throw new IllegalArgumentException(
          "Metal "
              + name
              + " has a proof strength of "
              + proofStrength
              + " MPa, an ultimate strength of "
              + ultimateStrength
              + " MPa, a modulus of "
              + youngsModulus
              + " MPa; all must be above 0, and the ultimate strength not below the proof strength.");
    }
  }

  /** An alloy away from welds. */
  public static Metal of(Alloy alloy) {
    return new Metal(
        alloy.designation(),
        alloy.proofStrength(),
        alloy.ultimateStrength(),
        alloy.youngsModulus(),
        alloy.elongation(),
        alloy.source());
  }
}
