package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * The shank of a bolt that is pushed across its slot against the edge of a lip.
 *
 * @param name of the place
 * @param metal of the lip
 * @param diameter of the bolt, mm
 * @param thickness of the lip at its edge, mm
 * @param opening between the lips, mm
 * @param source where this is given
 */
public record ShankOnLip(
    String name, Metal metal, double diameter, double thickness, double opening, Source source) {

  /**
   * @throws IllegalArgumentException if a size is not above 0, or the bolt does not go between the
   *     lips
   */
  public ShankOnLip {
    if (!(diameter > 0) || !(thickness > 0) || !(opening >= diameter)) {
      throw new IllegalArgumentException(
          name
              + ": a lip must have a thickness, and the opening of its slot must let the bolt"
              + " through; found "
              + thickness
              + " mm, "
              + opening
              + " mm for a bolt of "
              + diameter
              + " mm.");
    }
  }
}
