package spanledger.overturning;

/**
 * Moments of permanent loads about a tipping line, without factors, N·mm.
 *
 * @param holding of the parts that hold the structure down, zero or more
 * @param tipping of the parts that tip it, zero or more
 * @param byHeight weight times height above the line; times the notional sway it is a tipping
 *     moment
 */
public record PermanentMoments(double holding, double tipping, double byHeight) {

  static final PermanentMoments NONE = new PermanentMoments(0, 0, 0);

  PermanentMoments plus(PermanentMoments other) {
    return new PermanentMoments(
        holding + other.holding, tipping + other.tipping, byHeight + other.byHeight);
  }
}
