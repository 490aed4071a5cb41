package spanledger.section.warping;

import java.util.List;
import org.jspecify.annotations.Nullable;
import spanledger.procedure.CompiledProcedure;
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

  private static final double NEGLIGIBLE_WARPING = 1e-4;
  private static final CompiledProcedure BOUNDS = TorsionBounds.PROCEDURE.compile();

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
  private final double[] bounds;
  private @Nullable Stresses stresses;

  FieldStage(SectionMesh mesh, PlaneProperties exact, double poissonRatio, Sharp sharp) {
    this.sharp = sharp;
    this.mesh = mesh;
    this.exact = exact;
    this.poissonRatio = poissonRatio;
    AreaIntegrals near = MeshIntegrals.about(mesh, exact.centroid());
    centroid =
        exact.centroid().plus(new Point(near.firstY() / near.area(), near.firstZ() / near.area()));
    torsion = new TorsionField(mesh, centroid);
    bounds = BOUNDS.run(torsion.lower(), torsion.upper());
    sums = torsion.sums();
    shear = new ShearField(torsion, poissonRatio);
    WarpingMoments moments = WarpingMoments.of(torsion);
    shearCentre = moments.shearCentre();
    warping = moments.aboutShearCentre();
    warpingConstant = moments.warpingConstant();
    flexibility = shearFlexibility();
  }

  TorsionField torsion() {
    return torsion;
  }

  private double torsionConstant() {
    return bounds[BOUNDS.slot("I_t")];
  }

  private double torsionError() {
    return bounds[BOUNDS.slot("ε_t")];
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
    // A member ten times as long as its section is wide has π²E I_w/L² ≈ 0.25 G I_w/width², with
    // width² ≈ 4 I_p/A. A ten thousandth of I_t is nothing, however large it is as a part of I_w.
    double lost = torsionConstant() * 4 * (exact.momentY() + exact.momentZ()) / exact.area() / 0.25;
    double nothing = NEGLIGIBLE_WARPING * lost;
    return Math.abs(warpingConstant - before.warpingConstant) / Math.max(warpingConstant, nothing);
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
    List<Point> places =
        List.of(
            peak(stresses().twist()).place(),
            peak(stresses().fromY()).place(),
            peak(stresses().fromZ()).place());
    boolean[] marked = new boolean[finer.triangleCount()];
    for (int t = 0; t < marked.length; t++) {
      for (int k = 0; k < 6; k++) {
        Point node = finer.node(finer.node(t, k));
        marked[t] |= places.stream().anyMatch(p -> p.distance(node) <= sharp.distance() / 2);
      }
    }
    return marked;
  }

  /** Smoothed stresses of torsion and of shear along y and z. */
  private record Stresses(StressAtNodes twist, StressAtNodes fromY, StressAtNodes fromZ) {}

  /** Worked out when first asked for: meshes on the way to the target never are. */
  private Stresses stresses() {
    Stresses known = stresses;
    if (known == null) {
      double[][] nodal = new StressRecovery(mesh, torsion.points()).atNodes(samples(), centroid);
      known =
          new Stresses(
              new StressAtNodes(mesh, nodal[0], nodal[1]),
              new StressAtNodes(mesh, nodal[2], nodal[3]),
              new StressAtNodes(mesh, nodal[4], nodal[5]));
      stresses = known;
    }
    return known;
  }

  private double[] peaks() {
    return new double[] {
      peak(stresses().twist()).stress(),
      peak(stresses().fromY()).stress(),
      peak(stresses().fromZ()).stress()
    };
  }

  private PeakStress peak(StressAtNodes stress) {
    return stress.peak(sharp.corners(), sharp.distance());
  }

  FieldProperties properties(FieldStage before, Changes changes, int refinements, double target) {
    PeakStress peak = peak(stresses().twist());
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
            peak(stresses().fromY()),
            peak(stresses().fromZ()),
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
        stresses().twist(),
        stresses().fromY(),
        stresses().fromZ());
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
