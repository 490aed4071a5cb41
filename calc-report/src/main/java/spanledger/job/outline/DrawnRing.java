package spanledger.job.outline;

import java.util.List;
import spanledger.job.source.Located;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/**
 * A ring and where its corners stand in the file.
 *
 * @param ring the ring
 * @param value the whole ring in the file
 * @param corners the corners in the file, in order; none for a circle and the like
 */
record DrawnRing(Ring ring, Located value, List<Corner> corners) {

  /**
   * A corner in the file.
   *
   * @param at the corner before it is rounded, mm
   * @param value where it stands
   */
  record Corner(Point at, Located value) {}

  /** The corner that begins the edge nearest to a place; the whole ring if it has no corners. */
  Located nearest(Point place) {
    Located nearest = value;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Point start = corners.get(i).at();
      Point along = corners.get((i + 1) % corners.size()).at().minus(start);
      double square = Math.max(along.dot(along), Double.MIN_NORMAL);
      double t = Math.max(0, Math.min(1, place.minus(start).dot(along) / square));
      double distance = place.distance(start.plus(along.times(t)));
      // Places that an edge shares with its neighbours belong to the first.
      if (distance < least - 1e-9) {
        least = distance;
        nearest = corners.get(i).value();
      }
    }
    return nearest;
  }
}
