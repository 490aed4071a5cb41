package spanledger.envelope;

import java.util.function.DoubleUnaryOperator;

/** Finds the place of a greatest value between two places, to a few millimetres. */
final class PlaceRefinement {

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** The width, mm, at which narrowing stops: a smooth peak of a metre's width is met to 1e-4. */
  private static final double FINE = 6;

  private PlaceRefinement() {}

  /**
   * Narrows down the place of the peak by golden section; places tried are whole millimetres.
   *
   * @param from the nearest place, mm
   * @param to the farthest place, mm
   * @param value the value at a place; must have one peak between the two for the result to be its
   *     greatest
   */
  static double overMillimetres(double from, double to, DoubleUnaryOperator value) {
    double low = Math.ceil(from);
    double high = Math.floor(to);
    if (high - low < 1) {
      return value.applyAsDouble(low);
    }
    double left = Math.rint(high - GOLDEN * (high - low));
    double right = Math.rint(low + GOLDEN * (high - low));
    double atLeft = value.applyAsDouble(left);
    double atRight = value.applyAsDouble(right);
    while (high - low > FINE && left < right) {
      if (atLeft >= atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = Math.rint(high - GOLDEN * (high - low));
        atLeft = value.applyAsDouble(left);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = Math.rint(low + GOLDEN * (high - low));
        atRight = value.applyAsDouble(right);
      }
    }
    double greatest = Math.max(atLeft, atRight);
    for (double at : new double[] {low, Math.rint((low + high) / 2), high}) {
      greatest = Math.max(greatest, value.applyAsDouble(at));
    }
    return greatest;
  }

  /**
   * The greatest value of the parabola through three evenly spaced values, or the greatest of them
   * if it peaks outside. Tells before the work is done how much narrowing down would find.
   */
  static double expected(double before, double here, double after) {
    double greatest = Math.max(here, Math.max(before, after));
    double bend = before - 2 * here + after;
    if (bend >= 0 || greatest > here) {
      return greatest;
    }
    double slope = (after - before) / 2;
    return here - slope * slope / (2 * bend);
  }
}
