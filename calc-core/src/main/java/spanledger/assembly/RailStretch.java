package spanledger.assembly;

/**
 * A stretch of guardrail between two neighbouring posts.
 *
 * @param platform the name of the platform
 * @param side the side
 * @param from the place of its first post along the side, mm
 * @param to the place of its second post, mm
 * @param isGate whether it is a gate
 */
public record RailStretch(String platform, Side side, double from, double to, boolean isGate) {

  /** The distance between the posts, mm. */
  public double length() {
    return to - from;
  }
}
