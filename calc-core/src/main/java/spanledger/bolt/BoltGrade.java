package spanledger.bolt;

import spanledger.provenance.Source;

/**
 * The strength of bolts of one grade.
 *
 * @param name for example {@code 8.8} or {@code A4-70}
 * @param ultimateStrength least tensile strength, MPa
 * @param proofStrength least 0.2 % proof strength, MPa
 * @param stainless whether it is an austenitic stainless steel, which may seize when tightened
 * @param largestDiameter up to which thread diameter these strengths hold, mm
 * @param source of the tensile strength
 * @param proofSource of the proof strength
 * @param note anything a reader should know
 */
public record BoltGrade(
    String name,
    double ultimateStrength,
    double proofStrength,
    boolean stainless,
    double largestDiameter,
    Source source,
    Source proofSource,
    String note) {

  /**
   * @throws IllegalArgumentException if a strength or the diameter is not above zero, or the proof
   *     strength is above the tensile strength
   */
  public BoltGrade {
    if (!(proofStrength > 0) || !(ultimateStrength >= proofStrength) || !(largestDiameter > 0)) {
      throw new IllegalArgumentException(
          "Bolt grade "
              + name
              + " has a tensile strength of "
              + ultimateStrength
              + " MPa, a proof strength of "
              + proofStrength
              + " MPa, up to "
              + largestDiameter
              + " mm; all must be above 0, and the proof strength not above the tensile strength.");
    }
  }
}
