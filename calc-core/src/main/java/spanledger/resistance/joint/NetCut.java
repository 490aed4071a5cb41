package spanledger.resistance.joint;

import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;

/**
 * A cut through a plate in tension, with holes.
 *
 * @param name of the place
 * @param metal of the plate
 * @param grossArea mm²
 * @param netArea less holes, by the weakest path, mm², for example of a {@link NetLine}
 * @param source where this is given
 */
public record NetCut(String name, Metal metal, Feed grossArea, Feed netArea, Source source) {

  /**
   * A cut whose areas are given.
   *
   * @throws IllegalArgumentException if an area is not positive, or the net one is above the gross
   *     one
   */
  public NetCut(String name, Metal metal, double grossArea, double netArea, Source source) {
    this(
        name,
        metal,
        new Feed.Given(grossArea, name + ", area", source),
        new Feed.Given(netArea, name + ", net area", source),
        source);
    if (!(netArea > 0) || !(grossArea >= netArea)) {
      throw new IllegalArgumentException(
          name + ": areas of a cut must be above 0, the net one not above the gross one.");
    }
  }
}
