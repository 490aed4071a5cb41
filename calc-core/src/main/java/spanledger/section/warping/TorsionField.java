package spanledger.section.warping;

import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.AreaIntegrals;
import spanledger.section.outline.Point;

/**
 * Torsion of unit twist per length and unit shear modulus on one mesh, solved twice: by the warping
 * function, whose torsion constant is never below that of the mesh, and by the stress function,
 * whose is never above.
 *
 * <p>The square of the difference of the two stress fields, integrated, is exactly the gap between
 * the two torsion constants, triangle by triangle; so it says where to refine. Reference: W. Prager
 * and J. L. Synge, Approximations in elasticity based on the concept of function space, Quart.
 * Appl. Math. 5 (1947).
 */
final class TorsionField {

  private final SectionMesh mesh;
  private final Point centroid;
  private final ElementPoints points;
  private final AreaIntegrals sums;
  private final LaplaceSystem warpingSystem;
  private final double[] warping;
  private final double[] stressFunction;
  private final double upper;
  private final double lower;

  /**
   * @param centroid the centroid of the mesh
   */
  TorsionField(SectionMesh mesh, Point centroid) {
    this.mesh = mesh;
    this.centroid = centroid;
    points = new ElementPoints(mesh, centroid);
    sums = MeshIntegrals.about(mesh, centroid);
    warpingSystem = LaplaceSystem.of(mesh, points, Unknowns.freeButOne(mesh));
    double[] twist = twistLoad();
    warping = warpingSystem.solve(twist);
    upper = sums.squareY() + sums.squareZ() - dot(twist, warping);
    double[] enclosed = enclosedLoad();
    stressFunction = LaplaceSystem.of(mesh, points, Unknowns.constantOnRings(mesh)).solve(enclosed);
    lower = dot(enclosed, stressFunction);
  }

  SectionMesh mesh() {
    return mesh;
  }

  Point centroid() {
    return centroid;
  }

  ElementPoints points() {
    return points;
  }

  /** The integrals of the mesh about its centroid. */
  AreaIntegrals sums() {
    return sums;
  }

  LaplaceSystem warpingSystem() {
    return warpingSystem;
  }

  /** The warping function for twist about the centroid by node, mm², up to a constant. */
  double[] warping() {
    return warping;
  }

  double[] stressFunction() {
    return stressFunction;
  }

  double upper() {
    return upper;
  }

  double lower() {
    return lower;
  }

  /** Each triangle's part of the gap between the bounds, mm⁴. */
  double[] gaps() {
    double[] gaps = new double[mesh.triangleCount()];
    for (int t = 0; t < gaps.length; t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        double dy = points.slopeY(warping, p) - points.z[p] - points.slopeZ(stressFunction, p);
        double dz = points.slopeZ(warping, p) + points.y[p] + points.slopeY(stressFunction, p);
        gaps[t] += points.weight[p] * (dy * dy + dz * dz);
      }
    }
    return gaps;
  }

  /** The load of unit twist: ∫(z ∂v/∂y − y ∂v/∂z) dA. */
  private double[] twistLoad() {
    double[] load = new double[mesh.nodeCount()];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        double w = points.weight[p];
        for (int k = 0; k < 6; k++) {
          load[points.nodes[k]] +=
              w * (points.z[p] * points.dy[p][k] - points.y[p] * points.dz[p][k]);
        }
      }
    }
    return load;
  }

  /**
   * The load of the stress function: ∫2v dA over the material and, with the constant value of its
   * ring, over each hole.
   */
  private double[] enclosedLoad() {
    double[] load = new double[mesh.nodeCount()];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        for (int k = 0; k < 6; k++) {
          load[points.nodes[k]] += 2 * points.weight[p] * points.shape(p, k);
        }
      }
    }
    HoleAreas holes = HoleAreas.of(mesh);
    for (int hole = 1; hole <= mesh.holeCount(); hole++) {
      load[holes.anyNode(hole)] += 2 * holes.area(hole);
    }
    return load;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
