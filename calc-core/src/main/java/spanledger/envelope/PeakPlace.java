package spanledger.envelope;

import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;

/** Finds the place of a greatest value by parabolas through three places. */
final class PeakPlace {

  private static final int ROUNDS = 12;

  /** Places nearer to each other than this, mm, are one place. */
  private static final double FINE = 0.05;

  private PeakPlace() {}

  /**
   * Climbs from the middle by smaller and smaller steps, which also finds a peak beside a kink.
   *
   * @return the greatest value met
   */
  static double climb(Bracket from, DoubleUnaryOperator value) {
    double best = from.atMiddle();
    double where = from.middle();
    double width = (from.high() - from.low()) / 8;
    while (width > FINE) {
      double left = Math.max(from.low(), where - width);
      double right = Math.min(from.high(), where + width);
      double atLeft = left == where ? best : value.applyAsDouble(left);
      double atRight = right == where ? best : value.applyAsDouble(right);
      if (Math.max(atLeft, atRight) > best) {
        where = atLeft > atRight ? left : right;
        best = Math.max(atLeft, atRight);
      } else {
        width /= 4;
      }
    }
    return best;
  }

  /** Three places, the middle one with the greatest value. */
  record Bracket(
      double low, double middle, double high, double atLow, double atMiddle, double atHigh) {

    /**
     * The peak of the parabola through three evenly spaced values, or the greatest of them if it
     * peaks outside.
     */
    double promise() {
      double greatest = Math.max(atMiddle, Math.max(atLow, atHigh));
      double bend = atLow - 2 * atMiddle + atHigh;
      if (bend >= 0 || greatest > atMiddle) {
        return greatest;
      }
      double slope = (atHigh - atLow) / 2;
      return atMiddle - slope * slope / (2 * bend);
    }

    Bracket with(double at, double value) {
      if (at > middle) {
        return value > atMiddle
            ? new Bracket(middle, at, high, atMiddle, value, atHigh)
            : new Bracket(low, middle, at, atLow, atMiddle, value);
      }
      return value > atMiddle
          ? new Bracket(low, at, middle, atLow, value, atMiddle)
          : new Bracket(at, middle, high, value, atMiddle, atHigh);
    }
  }

  /**
   * Narrows a peak down: each new place is where the parabola through the three known places peaks.
   *
   * @param from the places to begin with; two of them may be one if the best is at an end
   * @param value the value at a place, mm
   * @param enough stops as soon as no parabola promises more than this
   * @return the greatest value met
   */
  static double narrow(Bracket from, DoubleUnaryOperator value, DoubleSupplier enough) {
    Bracket b = from;
    if (b.low() == b.middle() || b.middle() == b.high()) {
      // The best is at an end: only a place inside tells whether something peaks before it.
      double at =
          b.low() == b.middle()
              ? b.middle() + 0.25 * (b.high() - b.middle())
              : b.middle() - 0.25 * (b.middle() - b.low());
      double found = value.applyAsDouble(at);
      if (found <= b.atMiddle()) {
        return b.atMiddle();
      }
      b = new Bracket(b.low(), at, b.high(), b.atLow(), found, b.atHigh());
    }
    for (int round = 0; round < ROUNDS; round++) {
      double left = b.middle() - b.low();
      double right = b.high() - b.middle();
      double slopeLeft = (b.atMiddle() - b.atLow()) / left;
      double slopeRight = (b.atHigh() - b.atMiddle()) / right;
      double bend = (slopeRight - slopeLeft) / (left + right);
      if (!(bend < 0) || Math.max(left, right) < FINE) {
        break;
      }
      // f(middle + d) = f + slope d + bend d², from the divided differences.
      double slope = slopeLeft + bend * left;
      double step = -slope / (2 * bend);
      double promised = b.atMiddle() - slope * slope / (4 * bend);
      if (promised <= enough.getAsDouble()) {
        break;
      }
      double at = b.middle() + step;
      boolean last = Math.abs(step) < FINE;
      if (!(at > b.low() && at < b.high()) || at == b.middle()) {
        break;
      }
      b = b.with(at, value.applyAsDouble(at));
      if (last) {
        break;
      }
    }
    return b.atMiddle();
  }
}
