package spanledger.joint;

import java.util.Optional;
import spanledger.material.Alloy;
import spanledger.provenance.Source;

/**
 * What a part of a foot is made of.
 *
 * @param name in words
 * @param proofStrength 0.2 % proof or yield strength, MPa
 * @param ultimateStrength MPa; the proof strength where nobody says more
 * @param youngsModulus MPa
 * @param strengthSource where the strengths come from; empty if they are of the foot itself
 * @param modulusSource where Young's modulus comes from
 */
public record FootMetal(
    String name,
    double proofStrength,
    double ultimateStrength,
    double youngsModulus,
    Optional<Source> strengthSource,
    Source modulusSource) {

  /** An alloy with its own sources. */
  public static FootMetal of(Alloy alloy) {
    return new FootMetal(
        alloy.designation(),
        alloy.proofStrength(),
        alloy.ultimateStrength(),
        alloy.youngsModulus(),
        Optional.of(alloy.source()),
        alloy.source());
  }

  /**
   * Steel of which the maker of the foot says the yield strength alone.
   *
   * @param yieldStrength MPa
   */
  public static FootMetal steel(double yieldStrength) {
    return new FootMetal(
        "steel of the foot",
        yieldStrength,
        yieldStrength,
        Steel.YOUNGS_MODULUS,
        Optional.empty(),
        Steel.SOURCE);
  }
}
