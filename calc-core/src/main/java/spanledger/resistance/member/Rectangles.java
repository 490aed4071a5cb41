package spanledger.resistance.member;

import java.util.ArrayList;
import java.util.List;
import spanledger.section.outline.Point;

/** Rectangles that make up a section. */
final class Rectangles {

  /** Gauss points of a half width of 1; two along each side are exact for third order. */
  private static final double GAUSS = 1 / Math.sqrt(3);

  private record Part(Point centre, Point halfLength, Point halfWidth) {}

  private final List<Part> parts = new ArrayList<>();

  /**
   * Adds one.
   *
   * @param halfLength from its centre to the middle of one side
   * @param halfWidth from its centre to the middle of the next side
   */
  Rectangles add(Point centre, Point halfLength, Point halfWidth) {
    parts.add(new Part(centre, halfLength, halfWidth));
    return this;
  }

  /** ∫y(y² + z²) dA and ∫z(y² + z²) dA, mm⁵. */
  Point cubicMoment() {
    Point sum = new Point(0, 0);
    for (Part part : parts) {
      double quarter = part.halfLength().length() * part.halfWidth().length();
      for (int i = -1; i <= 1; i += 2) {
        for (int j = -1; j <= 1; j += 2) {
          Point at =
              part.centre()
                  .plus(part.halfLength().times(i * GAUSS))
                  .plus(part.halfWidth().times(j * GAUSS));
          sum = sum.plus(at.times(at.dot(at) * quarter));
        }
      }
    }
    return sum;
  }
}
