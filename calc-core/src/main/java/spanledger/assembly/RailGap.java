package spanledger.assembly;

/**
 * A stretch of a side that the guardrail leaves to a gate or a stair.
 *
 * @param from its beginning along the side, mm
 * @param to its end, mm
 * @param isGate whether a gate closes it
 * @param words what it is, for messages
 */
record RailGap(double from, double to, boolean isGate, String words) {

  boolean covers(double at) {
    return at > from && at < to;
  }

  boolean overlaps(RailGap other) {
    return from < other.to - Draft.SAME_PLACE && other.from < to - Draft.SAME_PLACE;
  }
}
