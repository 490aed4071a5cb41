package spanledger.section.warping;

import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.AreaIntegrals;
import spanledger.section.outline.Point;

/**
 * The integrals over the mesh itself. Solutions use these, so that their loads balance to the last
 * digit even where the mesh stands in for arcs.
 */
final class MeshIntegrals {

  private MeshIntegrals() {}

  static AreaIntegrals about(SectionMesh mesh, Point origin) {
    ElementPoints points = new ElementPoints(mesh, origin);
    double area = 0;
    double firstY = 0;
    double firstZ = 0;
    double squareY = 0;
    double squareZ = 0;
    double product = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        double w = points.weight[p];
        double y = points.y[p];
        double z = points.z[p];
        area += w;
        firstY += w * y;
        firstZ += w * z;
        squareY += w * y * y;
        squareZ += w * z * z;
        product += w * y * z;
      }
    }
    return new AreaIntegrals(0, area, firstY, firstZ, squareY, squareZ, product);
  }
}
