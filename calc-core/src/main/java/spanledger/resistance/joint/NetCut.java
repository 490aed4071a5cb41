package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * A cut through a plate in tension, with holes.
 *
 * @param name of the place
 * @param metal of the plate
 * @param grossArea mm²
 * @param netArea less holes, by the weakest path, mm²
 * @param source where this is given
 */
public record NetCut(String name, Metal metal, double grossArea, double netArea, Source source) {

  /**
   * @throws IllegalArgumentException if an area is not positive, or the net one is above the gross
   *     one
   */
  public NetCut {
    if (!(netArea > 0) || !(grossArea >= netArea)) {
      throw new IllegalArgumentException(
          name + ": areas of a cut must be above 0, the net one not above the gross one.");
    }
  }
}
