package spanledger.envelope;

import java.util.function.DoubleUnaryOperator;

/** Finds the place of a greatest value between two places. */
public final class GoldenSection {

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** The width, mm, at which narrowing stops. */
  private static final double FINE = 0.1;

  private GoldenSection() {}

  /**
   * The place of the peak.
   *
   * @param value must have one peak between the two for the result to be its place
   */
  public static double peak(double from, double to, DoubleUnaryOperator value) {
    double low = from;
    double high = to;
    double left = high - GOLDEN * (high - low);
    double right = low + GOLDEN * (high - low);
    double atLeft = value.applyAsDouble(left);
    double atRight = value.applyAsDouble(right);
    while (high - low > FINE) {
      if (atLeft >= atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - GOLDEN * (high - low);
        atLeft = value.applyAsDouble(left);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + GOLDEN * (high - low);
        atRight = value.applyAsDouble(right);
      }
    }
    return atLeft >= atRight ? left : right;
  }
}
