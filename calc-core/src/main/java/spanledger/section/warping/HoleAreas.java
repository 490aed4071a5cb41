package spanledger.section.warping;

import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.Point;

/** The areas that the mesh leaves out as holes. */
final class HoleAreas {

  private final double[] area;
  private final int[] node;

  private HoleAreas(int holes) {
    area = new double[holes + 1];
    node = new int[holes + 1];
  }

  static HoleAreas of(SectionMesh mesh) {
    HoleAreas holes = new HoleAreas(mesh.holeCount());
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        // Along the boundary all three nodes of an edge lie on one ring; an edge across a wall has
        // its middle inside.
        int middle = mesh.node(t, 3 + k);
        int ring = mesh.ring(middle);
        if (ring > 0) {
          holes.node[ring] = middle;
          holes.area[ring] +=
              underParabola(
                  mesh.node(mesh.node(t, k)),
                  mesh.node(middle),
                  mesh.node(mesh.node(t, (k + 1) % 3)));
        }
      }
    }
    return holes;
  }

  double area(int hole) {
    return area[hole];
  }

  int anyNode(int hole) {
    return node[hole];
  }

  /** Holes are passed on their right, so the area to the right of the edge counts. */
  private static double underParabola(Point start, Point middle, Point end) {
    Point bow = middle.minus(start.towards(end, 0.5));
    double chord = start.cross(end) / 2;
    double segment = 2.0 / 3 * end.minus(start).cross(bow);
    return -(chord - segment);
  }
}
