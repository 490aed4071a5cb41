package spanledger.robustness;

import java.util.Optional;

/**
 * How a frame bears some states: the worst of each.
 *
 * @param failure why it cannot bear one of them at all; empty if it bears all
 * @param criticalFactor the least factor on all loads at which it buckles; 0 if it cannot bear
 *     them, at most the limit of the search
 * @param mode how it buckles there, in words
 * @param movement the greatest level movement of a node, mm; NaN if it cannot bear a state
 * @param use the greatest stress per design strength; NaN likewise
 * @param used the member it is in
 */
public record FrameState(
    Optional<String> failure,
    double criticalFactor,
    String mode,
    double movement,
    double use,
    String used) {

  static FrameState fallen(String why) {
    return new FrameState(Optional.of(why), 0, why, Double.NaN, Double.NaN, "");
  }
}
