package spanledger.section.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.section.outline.Point;

/** Points newly placed in one round, for asking whether another has room. */
final class PointGrid {

  private final Map<Long, List<Point>> cells = new HashMap<>();
  private final double cell;

  /**
   * @param scale points of the mesh so far, which set the size of the cells; they are not in the
   *     grid
   */
  PointGrid(List<Point> scale) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Point point : scale) {
      least = Math.min(least, Math.min(point.y(), point.z()));
      greatest = Math.max(greatest, Math.max(point.y(), point.z()));
    }
    cell = (greatest - least) / 64;
  }

  void add(Point point) {
    cells
        .computeIfAbsent(key(index(point.y()), index(point.z())), k -> new ArrayList<>())
        .add(point);
  }

  /** Whether no point of the grid lies within the distance. */
  boolean isFree(Point point, double distance) {
    for (long i = index(point.y() - distance); i <= index(point.y() + distance); i++) {
      for (long j = index(point.z() - distance); j <= index(point.z() + distance); j++) {
        for (Point other : cells.getOrDefault(key(i, j), List.of())) {
          if (other.distance(point) < distance) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private long index(double coordinate) {
    return (long) Math.floor(coordinate / cell);
  }

  private static long key(long i, long j) {
    return i * 1_000_003L + j;
  }
}
