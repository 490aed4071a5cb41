package spanledger.assembly;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A structure in the words of the trade.
 *
 * @param platforms its platforms and walkways
 * @param stairs its stairs
 * @param without the names of generated braces that are left out
 * @param product limits that the maker of the product states, if given
 */
public record Assembly(
    List<Platform> platforms,
    List<Stair> stairs,
    Set<String> without,
    Optional<ProductLimits> product) {
  public Assembly {
    platforms = List.copyOf(platforms);
    stairs = List.copyOf(stairs);
    without = Set.copyOf(without);
  }

  /** The platform of a name. */
  public Optional<Platform> platform(String name) {
    return platforms.stream().filter(platform -> platform.name().equals(name)).findFirst();
  }
}
