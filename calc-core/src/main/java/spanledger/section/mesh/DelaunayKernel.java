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
    IncrementalTin tin = new IncrementalTin(spacing);
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
        constraint.add(new Vertex(start.y(), start.z(), 0, points.size()));
        points.add(start);
        pieces.add(ring.get(i));
      }
      constraint.complete();
      constraints.add(constraint);
    }
    List<Vertex> vertices = new ArrayList<>();
    for (Point point : inner) {
      vertices.add(new Vertex(point.y(), point.z(), 0, points.size()));
      points.add(point);
    }
    if (!vertices.isEmpty()) {
      tin.add(vertices, null);
    }
    tin.addConstraints(constraints, false);
    List<int[]> triangles = new ArrayList<>();
    for (SimpleTriangle triangle : tin.triangles()) {
      triangles.add(
          new int[] {
            triangle.getVertexA().getIndex(),
            triangle.getVertexB().getIndex(),
            triangle.getVertexC().getIndex()
          });
    }
    tin.dispose();
    return inside(points, pieces, pieceByNodes, triangles);
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
