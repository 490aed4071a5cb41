package spanledger.section.mesh;

import java.util.Arrays;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;

/**
 * A mesh of triangles with six nodes: three corners, then the middles of edges 1-2, 2-3, 3-1.
 * Middles of edges along arcs lie on the arc, so that such triangles have one curved side.
 *
 * <p>Immutable. Nodes on the boundary know their ring: 0 for the outer ring, then the holes in
 * order.
 */
public final class SectionMesh {

  /** The ring of a node inside the material. */
  public static final int NO_RING = -1;

  private final Triangulation corners;
  private final int holes;
  private final Point[] nodes;
  private final int[] triangles;
  private final int[] rings;

  private SectionMesh(Triangulation corners, int holes) {
    this.corners = corners;
    this.holes = holes;
    Triangulation.EdgeNumbers edges = corners.edgeNumbers();
    int cornerCount = corners.points().size();
    nodes = corners.points().toArray(new Point[cornerCount + edges.count()]);
    triangles = new int[6 * corners.triangleCount()];
    rings = new int[nodes.length];
    Arrays.fill(rings, NO_RING);
    for (int t = 0; t < corners.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        int node = cornerCount + edges.of(t, k);
        triangles[6 * t + k] = corners.corner(t, k);
        triangles[6 * t + 3 + k] = node;
        int piece = corners.piece(t, k);
        if (piece >= 0) {
          BoundaryPiece along = corners.pieces().get(piece);
          nodes[node] = along.at(0.5);
          rings[node] = along.ring();
          rings[corners.corner(t, k)] = along.ring();
          rings[corners.corner(t, k + 1)] = along.ring();
        } else {
          nodes[node] = corners.point(t, k).towards(corners.point(t, k + 1), 0.5);
        }
      }
    }
  }

  /**
   * The coarsest mesh with good triangles.
   *
   * @throws MeshingException if details are too fine for it
   */
  public static SectionMesh of(Outline outline) {
    return new SectionMesh(DelaunayMesher.mesh(outline), outline.holes().size());
  }

  /**
   * A finer mesh in which each marked triangle is halved, and others where needed to fit.
   *
   * @param marked one mark per triangle, not modified
   */
  public SectionMesh refined(boolean[] marked) {
    return new SectionMesh(Bisection.refine(corners, marked), holes);
  }

  public int nodeCount() {
    return nodes.length;
  }

  public int triangleCount() {
    return triangles.length / 6;
  }

  public int holeCount() {
    return holes;
  }

  public Point node(int node) {
    return nodes[node];
  }

  /**
   * A node of a triangle.
   *
   * @param k 0 to 2 for corners, 3 to 5 for middles
   */
  public int node(int triangle, int k) {
    return triangles[6 * triangle + k];
  }

  /** The ring that a node lies on, or {@link #NO_RING}. */
  public int ring(int node) {
    return rings[node];
  }

  /** The area of a triangle taken with straight sides, mm². */
  public double area(int triangle) {
    return corners.area(triangle);
  }

  /** The least angle of the triangles taken with straight sides, rad. */
  public double leastAngle() {
    return corners.leastAngle();
  }
}
