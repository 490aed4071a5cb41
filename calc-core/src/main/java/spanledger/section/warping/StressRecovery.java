package spanledger.section.warping;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.Point;

/**
 * Smooth stresses from the stresses inside triangles: around each corner node a quadratic is fitted
 * to the triangles there, which is one order more accurate than the triangles themselves.
 *
 * <p>Reference: O. C. Zienkiewicz and J. Z. Zhu, The superconvergent patch recovery and a
 * posteriori error estimates, Int. J. Numer. Meth. Engng 33 (1992).
 */
final class StressRecovery {

  /** Samples taken inside each triangle: the first integration points. */
  static final int SAMPLES = 3;

  private static final int TERMS = 6;

  /** Fewer triangles leave the quadratic loose; then their neighbours join in. */
  private static final int FEWEST_TRIANGLES = 5;

  private final SectionMesh mesh;
  private final List<List<Integer>> trianglesOf = new ArrayList<>();
  private final double[][] sampleY;
  private final double[][] sampleZ;

  StressRecovery(SectionMesh mesh, ElementPoints points) {
    this.mesh = mesh;
    for (int n = 0; n < mesh.nodeCount(); n++) {
      trianglesOf.add(new ArrayList<>(6));
    }
    sampleY = new double[mesh.triangleCount()][SAMPLES];
    sampleZ = new double[mesh.triangleCount()][SAMPLES];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      for (int k = 0; k < 3; k++) {
        trianglesOf.get(points.nodes[k]).add(t);
      }
      System.arraycopy(points.y, 0, sampleY[t], 0, SAMPLES);
      System.arraycopy(points.z, 0, sampleZ[t], 0, SAMPLES);
    }
  }

  /**
   * Nodal values of fields given inside triangles.
   *
   * @param samples one value per field, triangle and sample, not modified
   * @param origin where the coordinates of the integration points are taken from
   * @return one value per field and node
   */
  double[][] atNodes(double[][] samples, Point origin) {
    double[][] sums = new double[samples.length][mesh.nodeCount()];
    int[] count = new int[mesh.nodeCount()];
    LinearSolverDense<DMatrixRMaj> solver =
        LinearSolverFactory_DDRM.leastSquaresQrPivot(true, false);
    for (int n = 0; n < mesh.nodeCount(); n++) {
      if (!trianglesOf.get(n).isEmpty()) {
        fit(n, samples, origin, solver, sums, count);
      }
    }
    for (double[] sum : sums) {
      for (int n = 0; n < count.length; n++) {
        sum[n] /= count[n];
      }
    }
    return sums;
  }

  private void fit(
      int corner,
      double[][] samples,
      Point origin,
      LinearSolverDense<DMatrixRMaj> solver,
      double[][] sums,
      int[] count) {
    List<Integer> patch = patch(corner);
    Point at = mesh.node(corner).minus(origin);
    double size = 0;
    for (int t : patch) {
      for (int s = 0; s < SAMPLES; s++) {
        size = Math.max(size, Math.hypot(sampleY[t][s] - at.y(), sampleZ[t][s] - at.z()));
      }
    }
    DMatrixRMaj terms = new DMatrixRMaj(patch.size() * SAMPLES, TERMS);
    DMatrixRMaj values = new DMatrixRMaj(patch.size() * SAMPLES, samples.length);
    int row = 0;
    for (int t : patch) {
      for (int s = 0; s < SAMPLES; s++) {
        put(terms.data, row, (sampleY[t][s] - at.y()) / size, (sampleZ[t][s] - at.z()) / size);
        for (int f = 0; f < samples.length; f++) {
          values.set(row, f, samples[f][t * SAMPLES + s]);
        }
        row++;
      }
    }
    DMatrixRMaj fitted = new DMatrixRMaj(TERMS, samples.length);
    if (!solver.setA(terms)) {
      throw new IllegalStateException("No stresses around " + mesh.node(corner) + ".");
    }
    solver.solve(values, fitted);
    add(corner, corner, fitted, size, sums, count);
    for (int t : trianglesOf.get(corner)) {
      for (int k = 0; k < 3; k++) {
        if (mesh.node(t, k) == corner) {
          // The middles of both edges that start here; each triangle counts once for each of its
          // edges.
          add(corner, mesh.node(t, 3 + k), fitted, size, sums, count);
          add(corner, mesh.node(t, 3 + (k + 2) % 3), fitted, size, sums, count);
        }
      }
    }
  }

  private List<Integer> patch(int corner) {
    List<Integer> near = trianglesOf.get(corner);
    TreeSet<Integer> patch = new TreeSet<>(near);
    while (patch.size() < FEWEST_TRIANGLES && patch.size() < mesh.triangleCount()) {
      for (int t : patch.toArray(Integer[]::new)) {
        for (int k = 0; k < 3; k++) {
          patch.addAll(trianglesOf.get(mesh.node(t, k)));
        }
      }
    }
    return List.copyOf(patch);
  }

  private void add(
      int corner, int node, DMatrixRMaj fitted, double size, double[][] sums, int[] count) {
    Point away = mesh.node(node).minus(mesh.node(corner)).times(1 / size);
    double[] terms = new double[TERMS];
    put(terms, 0, away.y(), away.z());
    for (int f = 0; f < sums.length; f++) {
      for (int i = 0; i < TERMS; i++) {
        sums[f][node] += terms[i] * fitted.get(i, f);
      }
    }
    count[node]++;
  }

  private static void put(double[] terms, int row, double y, double z) {
    int at = row * TERMS;
    terms[at] = 1;
    terms[at + 1] = y;
    terms[at + 2] = z;
    terms[at + 3] = y * y;
    terms[at + 4] = y * z;
    terms[at + 5] = z * z;
  }
}
