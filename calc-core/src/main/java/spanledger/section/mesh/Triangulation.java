package spanledger.section.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.section.outline.Point;

/**
 * Corner nodes, triangles and the boundary pieces along them. Triangles turn to the left; edge k of
 * a triangle runs from its corner k to corner k + 1.
 */
final class Triangulation {

  /** No boundary along this edge. */
  static final int INSIDE = -1;

  private final List<Point> points;
  private final int[] corners;
  private final int[] pieceOf;
  private final List<BoundaryPiece> pieces;

  /**
   * @param points corner nodes
   * @param corners three nodes per triangle, taken over
   * @param pieceOf three piece numbers per triangle, or {@link #INSIDE}, taken over
   * @param pieces boundary pieces
   */
  Triangulation(List<Point> points, int[] corners, int[] pieceOf, List<BoundaryPiece> pieces) {
    this.points = List.copyOf(points);
    this.corners = corners;
    this.pieceOf = pieceOf;
    this.pieces = List.copyOf(pieces);
  }

  int triangleCount() {
    return corners.length / 3;
  }

  List<Point> points() {
    return points;
  }

  List<BoundaryPiece> pieces() {
    return pieces;
  }

  int corner(int triangle, int k) {
    return corners[3 * triangle + k % 3];
  }

  Point point(int triangle, int k) {
    return points.get(corner(triangle, k));
  }

  /** The number of the boundary piece along edge k of the triangle, or {@link #INSIDE}. */
  int piece(int triangle, int k) {
    return pieceOf[3 * triangle + k];
  }

  double area(int triangle) {
    Point a = point(triangle, 0);
    return point(triangle, 1).minus(a).cross(point(triangle, 2).minus(a)) / 2;
  }

  double edgeLength(int triangle, int k) {
    return point(triangle, k).distance(point(triangle, k + 1));
  }

  int longestEdge(int triangle) {
    double a = edgeLength(triangle, 0);
    double b = edgeLength(triangle, 1);
    double c = edgeLength(triangle, 2);
    return a >= b && a >= c ? 0 : b >= c ? 1 : 2;
  }

  /** The least angle of all triangles, rad. */
  double leastAngle() {
    double least = Math.PI;
    for (int t = 0; t < triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        Point a = point(t, k + 1).minus(point(t, k));
        Point b = point(t, k + 2).minus(point(t, k));
        least = Math.min(least, Math.atan2(a.cross(b), a.dot(b)));
      }
    }
    return least;
  }

  /** Numbers the edges: equal numbers for the shared edge of two triangles, three per triangle. */
  EdgeNumbers edgeNumbers() {
    int[] numbers = new int[corners.length];
    Map<Long, Integer> known = new HashMap<>(corners.length);
    for (int t = 0; t < triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        int a = corner(t, k);
        int b = corner(t, k + 1);
        long key = (long) Math.min(a, b) << 32 | Math.max(a, b);
        Integer number = known.putIfAbsent(key, known.size());
        numbers[3 * t + k] = number == null ? known.size() - 1 : number;
      }
    }
    return new EdgeNumbers(numbers, known.size());
  }

  /** Edge numbers of a triangulation. */
  static final class EdgeNumbers {
    private final int[] numbers;
    private final int count;

    private EdgeNumbers(int[] numbers, int count) {
      this.numbers = numbers;
      this.count = count;
    }

    int of(int triangle, int k) {
      return numbers[3 * triangle + k % 3];
    }

    int count() {
      return count;
    }

    @Override
    public String toString() {
      return count + " edges " + Arrays.toString(numbers);
    }
  }
}
