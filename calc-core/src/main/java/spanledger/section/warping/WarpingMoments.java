package spanledger.section.warping;

import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.AreaIntegrals;
import spanledger.section.outline.Point;

/**
 * Shear centre and warping constant from the warping function ω about the centroid.
 *
 * <p>About the point (y_s, z_s) the warping is ω − z_s y + y_s z + c; the shear centre makes its
 * moments with 1, y and z vanish (E. Trefftz, Z. angew. Math. Mech. 15 (1935)).
 */
final class WarpingMoments {

  private final TorsionField torsion;
  private final Point shearCentre;
  private final double mean;
  private final double square;

  private WarpingMoments(TorsionField torsion, Point shearCentre, double mean, double square) {
    this.torsion = torsion;
    this.shearCentre = shearCentre;
    this.mean = mean;
    this.square = square;
  }

  static WarpingMoments of(TorsionField torsion) {
    ElementPoints points = torsion.points();
    double[] omega = torsion.warping();
    AreaIntegrals sums = torsion.sums();
    double first = 0;
    double withY = 0;
    double withZ = 0;
    for (int t = 0; t < torsion.mesh().triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        double w = points.weight[p] * points.value(omega, p);
        first += w;
        withY += w * points.y[p];
        withZ += w * points.z[p];
      }
    }
    double iz = sums.squareY();
    double iy = sums.squareZ();
    double iyz = sums.productYZ();
    double det = iy * iz - iyz * iyz;
    // z_s I_z − y_s I_yz = ∫ωy and z_s I_yz − y_s I_y = ∫ωz
    double ys = (iyz * withY - iz * withZ) / det;
    double zs = (iy * withY - iyz * withZ) / det;
    WarpingMoments moments = new WarpingMoments(torsion, new Point(ys, zs), first / sums.area(), 0);
    return new WarpingMoments(torsion, moments.shearCentre, moments.mean, moments.squareOf(points));
  }

  private double squareOf(ElementPoints points) {
    double[] about = aboutShearCentre();
    double sum = 0;
    for (int t = 0; t < torsion.mesh().triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        double value = points.value(about, p);
        sum += points.weight[p] * value * value;
      }
    }
    return sum;
  }

  /** From the centroid of the mesh, mm. */
  Point shearCentre() {
    return shearCentre;
  }

  /** ∫ω² dA about the shear centre, mm⁶. */
  double warpingConstant() {
    return square;
  }

  /** The warping about the shear centre by node, with mean zero, mm². */
  double[] aboutShearCentre() {
    SectionMesh mesh = torsion.mesh();
    Point centroid = torsion.centroid();
    double[] about = torsion.warping().clone();
    for (int n = 0; n < about.length; n++) {
      Point at = mesh.node(n).minus(centroid);
      about[n] += shearCentre.y() * at.z() - shearCentre.z() * at.y() - mean;
    }
    return about;
  }
}
