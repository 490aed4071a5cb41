package spanledger.section.warping;

import java.util.List;
import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.AreaIntegrals;
import spanledger.section.outline.CubicMoments;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;

/** Everything solved on one mesh of the sequence. */
final class FieldStage {

  /** Relative changes of warping constant and shear areas from one mesh to the next. */
  record Changes(double warping, double shear) {}

  /** Corners left out of peak stresses, and how far around. */
  record Sharp(List<Point> corners, double distance) {}

  private final PlaneProperties exact;
  private final double poissonRatio;
  private final SectionMesh mesh;
  private final Point centroid;
  private final TorsionField torsion;
  private final ShearField shear;
  private final AreaIntegrals sums;
  private final Point shearCentre;
  private final double[] warping;
  private final double warpingConstant;
  private final double[] flexibility;
  private final Sharp sharp;
  private final StressAtNodes twist;
  private final StressAtNodes fromY;
  private final StressAtNodes fromZ;

  FieldStage(SectionMesh mesh, PlaneProperties exact, double poissonRatio, Sharp sharp) {
    this.sharp = sharp;
    this.mesh = mesh;
    this.exact = exact;
    this.poissonRatio = poissonRatio;
    AreaIntegrals near = MeshIntegrals.about(mesh, exact.centroid());
    centroid =
        exact.centroid().plus(new Point(near.firstY() / near.area(), near.firstZ() / near.area()));
    torsion = new TorsionField(mesh, centroid);
    sums = torsion.sums();
    shear = new ShearField(torsion, poissonRatio);
    WarpingMoments moments = WarpingMoments.of(torsion);
    shearCentre = moments.shearCentre();
    warping = moments.aboutShearCentre();
    warpingConstant = moments.warpingConstant();
    flexibility = shearFlexibility();
    double[][] stresses = new StressRecovery(mesh, torsion.points()).atNodes(samples(), centroid);
    twist = new StressAtNodes(mesh, stresses[0], stresses[1]);
    fromY = new StressAtNodes(mesh, stresses[2], stresses[3]);
    fromZ = new StressAtNodes(mesh, stresses[4], stresses[5]);
  }

  TorsionField torsion() {
    return torsion;
  }

  private double torsionConstant() {
    return (torsion.upper() + torsion.lower()) / 2;
  }

  private double torsionError() {
    return (torsion.upper() - torsion.lower()) / 2 / torsionConstant();
  }

  private double shapeError() {
    double meshed = sums.squareY() + sums.squareZ();
    return Math.abs(meshed / (exact.momentY() + exact.momentZ()) - 1);
  }

  boolean isGoodEnough(double target) {
    return torsionError() <= target && shapeError() <= target;
  }

  Changes changesFrom(FieldStage before) {
    return new Changes(warpingChange(before), shearChange(before));
  }

  private double warpingChange(FieldStage before) {
    // Sections that hardly warp have nothing to be relative to but their own size.
    double size = exact.area() * (exact.momentY() + exact.momentZ());
    return Math.abs(warpingConstant - before.warpingConstant)
        / Math.max(warpingConstant, 1e-3 * size);
  }

  private double shearChange(FieldStage before) {
    return Math.max(
        Math.abs(flexibility[0] / before.flexibility[0] - 1),
        Math.abs(flexibility[1] / before.flexibility[1] - 1));
  }

  /** Growth of bending stress per unit shear along y, then along z: a, b, a, b. */
  private double[] growth() {
    double det = sums.squareY() * sums.squareZ() - sums.productYZ() * sums.productYZ();
    return new double[] {
      sums.squareZ() / det, -sums.productYZ() / det, -sums.productYZ() / det, sums.squareY() / det
    };
  }

  /**
   * ∫τ² dA for unit shear along y, along z, and for both on each other; then torque of each about
   * the centroid.
   */
  private double[] shearFlexibility() {
    double[] g = growth();
    double[] sum = new double[5];
    ElementPoints points = torsion.points();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < ElementPoints.POINTS; p++) {
        double yy = shear.stressY(g[0], g[1], p);
        double yz = shear.stressZ(g[0], g[1], p);
        double zy = shear.stressY(g[2], g[3], p);
        double zz = shear.stressZ(g[2], g[3], p);
        double w = points.weight[p];
        sum[0] += w * (yy * yy + yz * yz);
        sum[1] += w * (zy * zy + zz * zz);
        sum[2] += w * (yy * zy + yz * zz);
        sum[3] += w * (points.y[p] * yz - points.z[p] * yy);
        sum[4] += w * (points.y[p] * zz - points.z[p] * zy);
      }
    }
    return sum;
  }

  double peakChange(FieldStage before) {
    double[] now = peaks();
    double[] then = before.peaks();
    double change = 0;
    for (int i = 0; i < now.length; i++) {
      change = Math.max(change, Math.abs(now[i] / then[i] - 1));
    }
    return change;
  }

  /** Marks the triangles of a mesh that are near the peak stresses of this one. */
  boolean[] aroundPeaks(SectionMesh finer) {
    List<Point> places = List.of(peak(twist).place(), peak(fromY).place(), peak(fromZ).place());
    boolean[] marked = new boolean[finer.triangleCount()];
    for (int t = 0; t < marked.length; t++) {
      for (int k = 0; k < 6; k++) {
        Point node = finer.node(finer.node(t, k));
        marked[t] |= places.stream().anyMatch(p -> p.distance(node) <= sharp.distance() / 2);
      }
    }
    return marked;
  }

  private double[] peaks() {
    return new double[] {peak(twist).stress(), peak(fromY).stress(), peak(fromZ).stress()};
  }

  private PeakStress peak(StressAtNodes stress) {
    return stress.peak(sharp.corners(), sharp.distance());
  }

  FieldProperties properties(FieldStage before, Changes changes, int refinements, double target) {
    PeakStress peak = peak(twist);
    CubicMoments cubic = exact.cubicMoments();
    double is =
        Math.sqrt(
            (exact.momentY() + exact.momentZ()) / exact.area() + shearCentre.dot(shearCentre));
    return new FieldProperties(
        new TorsionProperties(
            torsionConstant(),
            torsion.lower(),
            torsion.upper(),
            1 / peak.stress(),
            peak,
            centroid.plus(shearCentre),
            warpingConstant),
        new ShearProperties(
            poissonRatio,
            1 / flexibility[0],
            1 / flexibility[1],
            flexibility[2],
            peak(fromY),
            peak(fromZ),
            centroid.plus(new Point(flexibility[4], -flexibility[3]))),
        new AsymmetryProperties(
            shearCentre.z() - cubic.alongZ() / (2 * exact.momentY()),
            shearCentre.y() - cubic.alongY() / (2 * exact.momentZ()),
            is),
        new FieldReport(
            mesh.triangleCount(),
            mesh.nodeCount(),
            refinements,
            mesh.leastAngle(),
            torsionError(),
            shapeError(),
            changes.warping(),
            changes.shear(),
            peakChange(before),
            target,
            isGoodEnough(target),
            sharp.corners(),
            sharp.distance()),
        mesh,
        warping,
        twist,
        fromY,
        fromZ);
  }

  /** Stresses inside triangles: of torsion per N·mm, then of shear per N along y and along z. */
  private double[][] samples() {
    double[] g = growth();
    ElementPoints points = torsion.points();
    double[] omega = torsion.warping();
    double[] psi = torsion.stressFunction();
    // The mean of the two torsion solutions, whose errors have opposite signs.
    double half = 0.5 / torsionConstant();
    double[][] samples = new double[6][mesh.triangleCount() * StressRecovery.SAMPLES];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      for (int p = 0; p < StressRecovery.SAMPLES; p++) {
        int at = t * StressRecovery.SAMPLES + p;
        samples[0][at] = half * (points.slopeY(omega, p) - points.z[p] + points.slopeZ(psi, p));
        samples[1][at] = half * (points.slopeZ(omega, p) + points.y[p] - points.slopeY(psi, p));
        samples[2][at] = shear.stressY(g[0], g[1], p);
        samples[3][at] = shear.stressZ(g[0], g[1], p);
        samples[4][at] = shear.stressY(g[2], g[3], p);
        samples[5][at] = shear.stressZ(g[2], g[3], p);
      }
    }
    return samples;
  }
}
