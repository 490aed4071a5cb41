package spanledger.joint;

import spanledger.provenance.Source;

/**
 * A threaded spindle between a foot's plate and the post that it is screwed into.
 *
 * @param rootDiameter of its thread, mm
 * @param extension from the ground to where it is guided, mm
 * @param eccentricity of the axial force, mm; 0 or more
 * @param metal what it is made of
 * @param source where the sizes come from
 */
public record Spindle(
    double rootDiameter, double extension, double eccentricity, FootMetal metal, Source source) {

  /**
   * @throws IllegalArgumentException if a size is not above zero
   */
  public Spindle {
    if (!(rootDiameter > 0) || !(extension > 0) || !(eccentricity >= 0)) {
      throw new IllegalArgumentException("A spindle needs sizes above zero.");
    }
  }
}
