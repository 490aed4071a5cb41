package spanledger.section.warping;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import spanledger.section.mesh.SectionMesh;

/** The factored matrix of ∫∇a·∇b over a mesh, for any number of right sides. */
final class LaplaceSystem {

  private final Unknowns unknowns;
  private final int[] rowOf;
  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;

  private LaplaceSystem(
      Unknowns unknowns, int[] rowOf, LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver) {
    this.unknowns = unknowns;
    this.rowOf = rowOf;
    this.solver = solver;
  }

  /**
   * Assembles and factors.
   *
   * @param points the mesh to integrate over; moved
   */
  static LaplaceSystem of(SectionMesh mesh, ElementPoints points, Unknowns unknowns) {
    SparsePattern pattern = SparsePattern.of(mesh, unknowns);
    int[] rowOf = BandOrder.of(pattern, unknowns.tiedCount());
    DMatrixSparseCSC matrix = pattern.emptyMatrix(rowOf);
    double[] element = new double[36];
    int[] rows = new int[6];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      points.enter(t, false);
      stiffness(points, element);
      for (int k = 0; k < 6; k++) {
        int unknown = unknowns.of(points.nodes[k]);
        rows[k] = unknown < 0 ? -1 : rowOf[unknown];
      }
      add(matrix, element, rows);
    }
    LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
        LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    if (!solver.setA(matrix)) {
      throw new IllegalStateException("The mesh falls into parts that nothing joins.");
    }
    return new LaplaceSystem(unknowns, rowOf, solver);
  }

  /**
   * Solves for the nodal values of a field.
   *
   * @param load the right side by node, not modified; loads of nodes that share an unknown are
   *     summed
   * @return the field by node
   */
  double[] solve(double[] load) {
    DMatrixRMaj right = new DMatrixRMaj(rowOf.length, 1);
    for (int n = 0; n < load.length; n++) {
      int unknown = unknowns.of(n);
      if (unknown >= 0) {
        right.data[rowOf[unknown]] += load[n];
      }
    }
    DMatrixRMaj solution = new DMatrixRMaj(rowOf.length, 1);
    solver.solve(right, solution);
    double[] field = new double[load.length];
    for (int n = 0; n < field.length; n++) {
      int unknown = unknowns.of(n);
      field[n] = unknown < 0 ? 0 : solution.data[rowOf[unknown]];
    }
    return field;
  }

  private static void stiffness(ElementPoints points, double[] element) {
    Arrays.fill(element, 0);
    for (int p = 0; p < ElementPoints.POINTS; p++) {
      double[] dy = points.dy[p];
      double[] dz = points.dz[p];
      for (int i = 0; i < 6; i++) {
        for (int j = 0; j <= i; j++) {
          element[6 * i + j] += points.weight[p] * (dy[i] * dy[j] + dz[i] * dz[j]);
        }
      }
    }
  }

  private static void add(DMatrixSparseCSC matrix, double[] element, int[] rows) {
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        if (rows[i] >= 0 && rows[j] >= 0) {
          int at =
              Arrays.binarySearch(
                  matrix.nz_rows, matrix.col_idx[rows[j]], matrix.col_idx[rows[j] + 1], rows[i]);
          matrix.nz_values[at] += element[i >= j ? 6 * i + j : 6 * j + i];
        }
      }
    }
  }
}
