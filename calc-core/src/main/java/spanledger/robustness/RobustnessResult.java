package spanledger.robustness;

import java.util.List;

/**
 * What becomes of a frame when one of its braces is missing.
 *
 * @param state the loads, in words
 * @param share of the imposed loads that acts
 * @param limit the critical load factor that has to be exceeded
 * @param whole how the frame bears the loads with all its members
 * @param losses the worst of each kind of members left out
 */
public record RobustnessResult(
    String state, double share, double limit, FrameState whole, List<BraceLoss> losses) {
  public RobustnessResult {
    losses = List.copyOf(losses);
  }
}
