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
   * Climbs from a place by smaller and smaller steps, which also finds a peak beside a kink.
   *
   * @param at where to begin, mm
   * @param value the value there
   * @param step the first step, mm
   */
  static void climb(
      double low, double high, double at, double value, double step, DoubleUnaryOperator of) {
    double best = value;
    double where = at;
    double width = step;
    while (width > FINE) {
      double left = Math.max(low, where - width);
      double right = Math.min(high, where + width);
      double atLeft = left == where ? best : of.applyAsDouble(left);
      double atRight = right == where ? best : of.applyAsDouble(right);
      boolean moved = Math.max(atLeft, atRight) > best;
      if (moved) {
        where = atLeft > atRight ? left : right;
        best = Math.max(atLeft, atRight);
      }
      if (!moved) {
        width /= 4;
      }
    }
  }

  /**
   * Narrows a peak down. Each new place is where the parabola through the three best known places
   * peaks, or halfway into the wider side where that gets nowhere.
   *
   * @param low a place at or before the best of three
   * @param middle the best of three
   * @param high a place at or after it
   * @param atLow value there
   * @param atMiddle value there; not less than the other two
   * @param atHigh value there
   * @param value the value at a place, mm
   * @param enough stops as soon as no parabola promises more than this
   */
  static void narrow(
      double low,
      double middle,
      double high,
      double atLow,
      double atMiddle,
      double atHigh,
      DoubleUnaryOperator value,
      DoubleSupplier enough) {
    double a = low;
    double b = middle;
    double c = high;
    double fa = atLow;
    double fb = atMiddle;
    double fc = atHigh;
    if (a == b || b == c) {
      // The best is at an end: only a point inside tells whether something peaks before it.
      double at = a == b ? b + 0.25 * (c - b) : b - 0.25 * (b - a);
      double found = value.applyAsDouble(at);
      if (found <= fb) {
        return;
      }
      if (a == b) {
        fa = fb;
      } else {
        fc = fb;
      }
      b = at;
      fb = found;
    }
    for (int round = 0; round < ROUNDS; round++) {
      double left = b - a;
      double right = c - b;
      if (left < FINE && right < FINE) {
        return;
      }
      double slopeLeft = (fb - fa) / left;
      double slopeRight = (fc - fb) / right;
      double bend = (slopeRight - slopeLeft) / (a + left + right - a);
      if (!(bend < 0)) {
        return;
      }
      // f(b + d) = fb + slope d + bend d², from the divided differences.
      double slope = slopeLeft + bend * left;
      double step = -slope / (2 * bend);
      double promised = fb - slope * slope / (4 * bend);
      if (promised <= enough.getAsDouble() && round > 0) {
        return;
      }
      if (promised <= 0.999 * enough.getAsDouble()) {
        return;
      }
      double at = b + step;
      if (!(at > a && at < c) || Math.abs(step) < FINE) {
        at = right > left ? b + Math.min(right / 2, 2 * FINE) : b - Math.min(left / 2, 2 * FINE);
        if (Math.abs(step) < FINE) {
          value.applyAsDouble(Math.max(a, Math.min(c, b + step)));
          return;
        }
      }
      double found = value.applyAsDouble(at);
      if (found > fb) {
        if (at > b) {
          a = b;
          fa = fb;
        } else {
          c = b;
          fc = fb;
        }
        b = at;
        fb = found;
      } else if (at > b) {
        c = at;
        fc = found;
      } else {
        a = at;
        fa = found;
      }
    }
  }
}
