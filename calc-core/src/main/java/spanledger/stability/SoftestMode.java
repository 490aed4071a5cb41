package spanledger.stability;

import java.util.Arrays;
import java.util.function.BiConsumer;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * The greatest eigenvalue of A⁻¹ B for symmetric A (positive definite) and B, by Lanczos' method in
 * the inner product of A with full orthogonalisation.
 *
 * <p>Reference: B. N. Parlett, The Symmetric Eigenvalue Problem (1980), ch. 13 and 15 (from
 * memory).
 */
final class SoftestMode {

  private static final double CLOSE = 1e-4;
  private static final int LEAST = 12;

  private final int size;
  private final int most;

  /**
   * @param most steps at most
   */
  SoftestMode(int size, int most) {
    this.size = size;
    this.most = Math.min(most, size);
  }

  /** Vectors in, vectors out: the second is overwritten. */
  interface Product extends BiConsumer<double[], double[]> {}

  /**
   * Searches.
   *
   * @param first A times a vector
   * @param second B times a vector
   * @param solve A⁻¹ times a vector
   * @param vector a start on entry, the eigenvector on return
   * @return the eigenvalue; zero if B vanishes on the start
   */
  double find(Product first, Product second, Product solve, double[] vector) {
    double[][] basis = new double[most][];
    double[][] images = new double[most][];
    double[] diagonal = new double[most];
    double[] beside = new double[most];
    double[] q = vector.clone();
    double[] p = new double[size];
    first.accept(q, p);
    double value = 0;
    double norm = Math.sqrt(Math.max(0, CriticalLoad.dot(q, p)));
    int steps = 0;
    double[] shape = new double[0];
    while (steps < most && norm > 0) {
      scale(q, 1 / norm);
      scale(p, 1 / norm);
      basis[steps] = q;
      images[steps] = p;
      double[] image = new double[size];
      second.accept(q, image);
      double[] next = new double[size];
      solve.accept(image, next);
      diagonal[steps] = CriticalLoad.dot(q, image);
      for (int round = 0; round < 2; round++) {
        for (int j = 0; j <= steps; j++) {
          double along = CriticalLoad.dot(next, images[j]);
          add(next, basis[j], -along);
          add(image, images[j], -along);
        }
      }
      double rest = CriticalLoad.dot(next, image);
      norm = rest > 0 ? Math.sqrt(rest) : 0;
      beside[steps] = norm;
      steps++;
      boolean last = steps == most || norm <= 1e-12 * Math.abs(diagonal[0]);
      if (last || steps % 4 == 0) {
        double[] main = Arrays.copyOf(diagonal, steps);
        double[] off = Arrays.copyOf(beside, steps - 1);
        EigenDecomposition eigen = new EigenDecomposition(main, off);
        double before = value;
        int best = 0;
        for (int i = 1; i < steps; i++) {
          if (eigen.getRealEigenvalue(i) > eigen.getRealEigenvalue(best)) {
            best = i;
          }
        }
        value = eigen.getRealEigenvalue(best);
        shape = eigen.getEigenvector(best).toArray();
        if (last || (steps >= LEAST && Math.abs(value - before) < CLOSE * Math.abs(value))) {
          break;
        }
      }
      q = next;
      p = image;
    }
    if (shape.length > 0) {
      Arrays.fill(vector, 0);
      for (int j = 0; j < shape.length; j++) {
        add(vector, basis[j], shape[j]);
      }
    }
    return value;
  }

  private static void scale(double[] vector, double factor) {
    for (int i = 0; i < vector.length; i++) {
      vector[i] *= factor;
    }
  }

  private static void add(double[] to, double[] vector, double factor) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * vector[i];
    }
  }
}
