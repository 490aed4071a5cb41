package spanledger.section.warping;

import java.util.List;
import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.Point;

/** Shear stresses at the nodes of a mesh, smoothed by {@link StressRecovery}. */
public final class StressAtNodes {

  private final SectionMesh mesh;
  private final double[] alongY;
  private final double[] alongZ;

  StressAtNodes(SectionMesh mesh, double[] alongY, double[] alongZ) {
    this.mesh = mesh;
    this.alongY = alongY;
    this.alongZ = alongZ;
  }

  /** τ_xy at a node. */
  public double y(int node) {
    return alongY[node];
  }

  /** τ_xz at a node. */
  public double z(int node) {
    return alongZ[node];
  }

  /** The size of the stress at a node. */
  public double size(int node) {
    return Math.hypot(alongY[node], alongZ[node]);
  }

  /**
   * The largest stress.
   *
   * @param sharp corners where the stress has no bound
   * @param distance how near to them nodes are left out, mm
   */
  PeakStress peak(List<Point> sharp, double distance) {
    int found = -1;
    for (int n = 0; n < mesh.nodeCount(); n++) {
      Point at = mesh.node(n);
      if ((found < 0 || size(n) > size(found))
          && sharp.stream().noneMatch(corner -> corner.distance(at) < distance)) {
        found = n;
      }
    }
    return found < 0
        ? new PeakStress(Double.NaN, new Point(Double.NaN, Double.NaN))
        : new PeakStress(size(found), mesh.node(found));
  }
}
