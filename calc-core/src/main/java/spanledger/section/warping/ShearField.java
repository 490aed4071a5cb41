package spanledger.section.warping;

import spanledger.section.mesh.SectionMesh;

/**
 * Shear stresses of bending without twist, for bending stress that grows along the member as a·y +
 * b·z: solved for a = 1 and for b = 1.
 *
 * <p>With Φ the solution, stresses are τ = ∇Φ − ν/(2(1 + ν)) d, where d = (a(y² − z²)/2 + b yz, a
 * yz + b(z² − y²)/2) comes from the sideways strain. References: S. P. Timoshenko and J. N.
 * Goodier, Theory of Elasticity, chapter on bending of bars; W. D. Pilkey, Analysis and Design of
 * Elastic Beams, 2002.
 */
final class ShearField {

  private final SectionMesh mesh;
  private final ElementPoints points;
  private final double sideways;
  private final double[] alongY;
  private final double[] alongZ;

  ShearField(TorsionField torsion, double poissonRatio) {
    mesh = torsion.mesh();
    points = torsion.points();
    sideways = poissonRatio / (2 * (1 + poissonRatio));
    alongY = torsion.warpingSystem().solve(load(1, 0));
    alongZ = torsion.warpingSystem().solve(load(0, 1));
  }

  /** The y part of the stress at a place of the entered triangle. */
  double stressY(double a, double b, int place) {
    return a * points.slopeY(alongY, place)
        + b * points.slopeY(alongZ, place)
        - sideways * strainY(a, b, points.y[place], points.z[place]);
  }

  /** The z part of the stress at a place of the entered triangle. */
  double stressZ(double a, double b, int place) {
    return a * points.slopeZ(alongY, place)
        + b * points.slopeZ(alongZ, place)
        - sideways * strainZ(a, b, points.y[place], points.z[place]);
  }

  private static double strainY(double a, double b, double y, double z) {
    return a * (y * y - z * z) / 2 + b * y * z;
  }

  private static double strainZ(double a, double b, double y, double z) {
    return a * y * z + b * (z * z - y * y) / 2;
  }

  private double[] load(double a, double b) {
    double[] load = new double[mesh.nodeCount()];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        double y = points.y[p];
        double z = points.z[p];
        double growth = a * y + b * z;
        double dy = sideways * strainY(a, b, y, z);
        double dz = sideways * strainZ(a, b, y, z);
        for (int k = 0; k < 6; k++) {
          load[points.nodes[k]] +=
              points.weight[p]
                  * (growth * points.shape(p, k) + dy * points.dy[p][k] + dz * points.dz[p][k]);
        }
      }
    }
    return load;
  }
}
