package spanledger.envelope;

import java.util.Optional;
import spanledger.action.Combination;

/**
 * A combination with its moving load, if it has one, standing at one place.
 *
 * @param combination the combination
 * @param standing where its moving load stands; present exactly if the combination has one
 */
public record Instance(Combination combination, Optional<Standing> standing) {
  public Instance {
    if (combination.moving().isPresent() != standing.isPresent()) {
      throw new IllegalArgumentException(
          "Combination " + combination.name() + " and its moving load do not fit together.");
    }
  }

  /** The combination with the place of the moving load, in words. */
  public String words() {
    return standing.isEmpty()
        ? combination.name()
        : combination.name() + " at " + standing.get().place();
  }

  /** The factor on the standing load, 0 if there is none. */
  public double standingFactor() {
    return combination.moving().map(combination::factor).orElse(0.0);
  }
}
