package spanledger.analysis;

import java.util.Optional;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/** A Cholesky factor of a stiffness. Immutable once made; solves may run at the same time. */
final class Factorisation {

  private final DMatrixSparseCSC lower;

  private Factorisation(DMatrixSparseCSC lower) {
    this.lower = lower;
  }

  /**
   * Factors a stiffness.
   *
   * @param upper its upper triangle, not modified
   * @return empty if it is not positive definite
   */
  static Optional<Factorisation> of(DMatrixSparseCSC upper) {
    if (upper.numCols == 0) {
      return Optional.of(new Factorisation(new DMatrixSparseCSC(0, 0, 0)));
    }
    CholeskyUpLooking_DSCC cholesky = new CholeskyUpLooking_DSCC();
    if (!cholesky.decompose(upper)) {
      return Optional.empty();
    }
    return Optional.of(new Factorisation(cholesky.getL()));
  }

  /** What is left of a freedom's own stiffness when all earlier freedoms may move. */
  double pivot(int equation) {
    double root = lower.nz_values[lower.col_idx[equation]];
    return root * root;
  }

  /** Entries of the factor. */
  int entries() {
    return lower.nz_length;
  }

  /** Solves in place. */
  void solve(double[] rightHandSide) {
    if (lower.numCols > 0) {
      TriangularSolver_DSCC.solveL(lower, rightHandSide);
      TriangularSolver_DSCC.solveTranL(lower, rightHandSide);
    }
  }
}
