package spanledger.section.mesh;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tinfour.common.IConstraint;
import org.tinfour.common.PolygonConstraint;
import org.tinfour.common.SimpleTriangle;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import spanledger.section.outline.Point;

/**
 * The constrained Delaunay triangulation of boundary pieces and points inside, by the Tinfour
 * library.
 */
final class DelaunayKernel {

  private DelaunayKernel() {}

  /**
   * Triangulates.
   *
   * @param rings chains of pieces, material to the left; the nodes are numbered in this order
   * @param inner points inside, numbered after those
   * @param spacing the least distance of two points, roughly, mm
   */
  static Triangulation triangulate(
      List<List<BoundaryPiece>> rings, List<Point> inner, double spacing) {
    // Tinfour's tolerances follow from the spacing alone, so it gets coordinates about the middle
    // with a spacing of 1.
    Scale scale = Scale.of(rings, spacing);
    IncrementalTin tin = new IncrementalTin(1);
    tin.add(scale.frame(), null);
    List<Point> points = new ArrayList<>();
    List<BoundaryPiece> pieces = new ArrayList<>();
    Map<Long, Integer> pieceByNodes = new HashMap<>();
    List<IConstraint> constraints = new ArrayList<>();
    for (List<BoundaryPiece> ring : rings) {
      PolygonConstraint constraint = new PolygonConstraint();
      int first = points.size();
      for (int i = 0; i < ring.size(); i++) {
        int next = first + (i + 1) % ring.size();
        Point start = ring.get(i).start();
        pieceByNodes.put(key(points.size(), next), pieces.size());
        constraint.add(scale.vertex(start, points.size()));
        points.add(start);
        pieces.add(ring.get(i));
      }
      constraint.complete();
      constraints.add(constraint);
    }
    List<Vertex> vertices = new ArrayList<>();
    for (Point point : inner) {
      vertices.add(scale.vertex(point, points.size()));
      points.add(point);
    }
    if (!vertices.isEmpty()) {
      tin.add(vertices, null);
    }
    tin.addConstraints(constraints, false);
    List<int[]> triangles = new ArrayList<>();
    for (SimpleTriangle triangle : tin.triangles()) {
      int a = triangle.getVertexA().getIndex();
      int b = triangle.getVertexB().getIndex();
      int c = triangle.getVertexC().getIndex();
      if (a >= 0 && b >= 0 && c >= 0) {
        triangles.add(new int[] {a, b, c});
      }
    }
    tin.dispose();
    return inside(points, pieces, pieceByNodes, triangles);
  }

  /** Moves and scales coordinates. */
  private record Scale(Point middle, double factor, double reach) {

    private static final int NO_POINT = -1;

    static Scale of(List<List<BoundaryPiece>> rings, double spacing) {
      double leastY = Double.POSITIVE_INFINITY;
      double leastZ = Double.POSITIVE_INFINITY;
      double greatestY = Double.NEGATIVE_INFINITY;
      double greatestZ = Double.NEGATIVE_INFINITY;
      for (BoundaryPiece piece : rings.get(0)) {
        Point at = piece.start();
        leastY = Math.min(leastY, at.y());
        leastZ = Math.min(leastZ, at.z());
        greatestY = Math.max(greatestY, at.y());
        greatestZ = Math.max(greatestZ, at.z());
      }
      Point middle = new Point((leastY + greatestY) / 2, (leastZ + greatestZ) / 2);
      double size = Math.max(greatestY - leastY, greatestZ - leastZ);
      return new Scale(middle, 1 / spacing, size / spacing);
    }

    Vertex vertex(Point point, int number) {
      return new Vertex(
          (point.y() - middle.y()) * factor, (point.z() - middle.z()) * factor, 0, number);
    }

    /** A triangle around everything, so that there is a triangulation to add to from the start. */
    List<Vertex> frame() {
      return List.of(
          new Vertex(-4 * reach, -3 * reach, 0, NO_POINT),
          new Vertex(4 * reach, -3 * reach, 0, NO_POINT),
          new Vertex(0, 5 * reach, 0, NO_POINT));
    }
  }

  private static long key(int from, int to) {
    return (long) from << 32 | to;
  }

  /** Keeps the triangles that can be reached from the left of a piece without crossing one. */
  private static Triangulation inside(
      List<Point> points,
      List<BoundaryPiece> pieces,
      Map<Long, Integer> pieceByNodes,
      List<int[]> triangles) {
    Map<Long, Integer> triangleByEdge = new HashMap<>(triangles.size() * 4);
    for (int t = 0; t < triangles.size(); t++) {
      int[] nodes = triangles.get(t);
      for (int k = 0; k < 3; k++) {
        triangleByEdge.put(key(nodes[k], nodes[(k + 1) % 3]), t);
      }
    }
    boolean[] kept = new boolean[triangles.size()];
    Deque<Integer> open = new ArrayDeque<>();
    for (Map.Entry<Long, Integer> each : pieceByNodes.entrySet()) {
      Integer triangle = triangleByEdge.get(each.getKey());
      if (triangle == null) {
        BoundaryPiece piece = pieces.get(each.getValue());
        throw new MeshingException(
            "No triangle along the boundary from " + piece.start() + " to " + piece.end() + ".");
      }
      if (!kept[triangle]) {
        kept[triangle] = true;
        open.add(triangle);
      }
    }
    while (!open.isEmpty()) {
      int[] nodes = triangles.get(open.remove());
      for (int k = 0; k < 3; k++) {
        int a = nodes[k];
        int b = nodes[(k + 1) % 3];
        Integer next = triangleByEdge.get(key(b, a));
        if (next != null && !kept[next] && !pieceByNodes.containsKey(key(a, b))) {
          kept[next] = true;
          open.add(next);
        }
      }
    }
    int[] corners = new int[3 * triangles.size()];
    int[] pieceOf = new int[3 * triangles.size()];
    int count = 0;
    for (int t = 0; t < kept.length; t++) {
      if (kept[t]) {
        int[] nodes = triangles.get(t);
        for (int k = 0; k < 3; k++) {
          corners[count] = nodes[k];
          pieceOf[count++] =
              pieceByNodes.getOrDefault(key(nodes[k], nodes[(k + 1) % 3]), Triangulation.INSIDE);
        }
      }
    }
    return new Triangulation(
        points, Arrays.copyOf(corners, count), Arrays.copyOf(pieceOf, count), pieces);
  }
}
