package spanledger.section.feature;

import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ray;

/** How thick a wall is across the middle of a line along it. */
final class Crossing {

  private Crossing() {}

  /**
   * The thickness, mm.
   *
   * @throws MissingFeatureException if the middle is not in the material
   */
  static double thickness(Outline outline, Point from, Point to) {
    if (from.equals(to)) {
      throw new MissingFeatureException("both ends at " + from);
    }
    Point middle = from.towards(to, 0.5);
    if (!outline.encloses(middle)) {
      throw new MissingFeatureException("no material at " + middle + ", half way between the ends");
    }
    Point across = to.minus(from).quarterTurn().times(1 / from.distance(to));
    return Ray.toBoundary(outline, middle, across)
        + Ray.toBoundary(outline, middle, across.times(-1));
  }
}
