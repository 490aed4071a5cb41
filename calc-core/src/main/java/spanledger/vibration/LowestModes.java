package spanledger.vibration;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import spanledger.sparse.BlockFactor;
import spanledger.sparse.BlockMatrix;
import spanledger.stability.FrameStiffness;

/**
 * The lowest eigenvalues of K v = λ M v by subspace iteration, with a count of those below by the
 * signs of the pivots of K − λ M (Sturm sequence).
 *
 * <p>Reference: K.-J. Bathe, Finite Element Procedures (1996), 11.6 (from memory).
 */
final class LowestModes {

  private static final double CLOSE = 1e-11;

  /** Of the energy of a vector: what is less after the others are taken from it is rounding. */
  private static final double ROUNDING = 1e-26;

  private static final int MOST_ROUNDS = 200;
  private static final int MOST_ENLARGEMENTS = 6;

  private final FrameStiffness stiffness;
  private final BlockMatrix mass;
  private final BlockMatrix unloaded;
  private final BlockFactor factor;
  private final int size;

  LowestModes(FrameStiffness stiffness, BlockMatrix mass) {
    this.stiffness = stiffness;
    this.mass = mass;
    this.size = stiffness.size();
    unloaded = new BlockMatrix(stiffness.structure());
    stiffness.assemble(new double[stiffness.bars()], 0, unloaded);
    factor = new BlockFactor(stiffness.structure());
  }

  /** Eigenvalues, rising, their vectors, and below which value there are no others. */
  static final class Found {
    private final double[] values;
    private final double[][] vectors;
    private final double provedBelow;

    Found(double[] values, double[][] vectors, double provedBelow) {
      this.values = values;
      this.vectors = vectors;
      this.provedBelow = provedBelow;
    }

    double[] values() {
      return values;
    }

    double[][] vectors() {
      return vectors;
    }

    double provedBelow() {
      return provedBelow;
    }
  }

  Found find(int count) {
    int wanted = Math.max(1, Math.min(count, movable()));
    int width = Math.min(movable(), Math.max(2 * wanted, wanted + 8));
    for (int attempt = 0; ; attempt++) {
      Found found = iterate(wanted, width);
      double last = found.values()[wanted - 1];
      // Just beyond the last, or in the gap to the next if that is nearer.
      double beyond = last * (1 + 1e-6);
      int below = countBelow(beyond);
      if (below <= wanted || attempt == MOST_ENLARGEMENTS) {
        int proved = Math.min(below, wanted);
        if (below > wanted) {
          throw new IllegalStateException(
              "Only " + proved + " of " + below + " frequencies were found.");
        }
        return new Found(found.values(), found.vectors(), last * (1 - 1e-6));
      }
      // Equal frequencies at the end of the list, or one that was missed: take more along.
      wanted = Math.min(movable(), below);
      width = Math.min(movable(), Math.max(2 * wanted, wanted + 8));
    }
  }

  private int movable() {
    int free = 0;
    for (int i = 0; i < size; i++) {
      free += stiffness.isFixed(i) || mass.diagonal(i / 6, i % 6) <= 0 ? 0 : 1;
    }
    return free;
  }

  private int countBelow(double value) {
    BlockMatrix shifted = new BlockMatrix(stiffness.structure());
    shifted.set(unloaded);
    shifted.add(mass, -value);
    factor.factor(shifted);
    return factor.negatives();
  }

  private Found iterate(int wanted, int width) {
    factor.factor(unloaded);
    double[][] vectors = starts(width);
    double[][] images = new double[width][size];
    double[] values = new double[width];
    double[] before = new double[width];
    for (int round = 0; round < MOST_ROUNDS; round++) {
      for (int i = 0; i < width; i++) {
        mass.multiply(vectors[i], images[i]);
        System.arraycopy(images[i], 0, vectors[i], 0, size);
        factor.solve(vectors[i]);
      }
      separate(vectors, images);
      double[][] stiff = new double[width][width];
      double[][] heavy = new double[width][width];
      double[] image = new double[size];
      for (int i = 0; i < width; i++) {
        mass.multiply(vectors[i], image);
        for (int j = 0; j < width; j++) {
          stiff[i][j] = dot(vectors[j], images[i]);
          heavy[i][j] = dot(vectors[j], image);
        }
      }
      double[][] turn = reduced(stiff, heavy, values);
      vectors = product(vectors, turn);
      boolean close = round > 0;
      for (int i = 0; i < wanted; i++) {
        close &= Math.abs(values[i] - before[i]) <= CLOSE * Math.abs(values[i]);
      }
      if (close) {
        break;
      }
      System.arraycopy(values, 0, before, 0, width);
    }
    double[] lowest = new double[wanted];
    double[][] shapes = new double[wanted][];
    for (int i = 0; i < wanted; i++) {
      lowest[i] = values[i];
      shapes[i] = vectors[i];
    }
    return new Found(lowest, shapes, 0);
  }

  private double[][] starts(int width) {
    Random random = new Random(1);
    double[][] vectors = new double[width][];
    for (int i = 0; i < width; i++) {
      vectors[i] = start(random);
    }
    return vectors;
  }

  private double[] start(Random random) {
    double[] vector = new double[size];
    for (int i = 0; i < size; i++) {
      double like = stiffness.like(i);
      boolean moves = !stiffness.isFixed(i) && like > 0;
      vector[i] = moves ? (random.nextDouble() - 0.5) / Math.sqrt(like) : 0;
    }
    return vector;
  }

  /**
   * Takes from each vector what the ones before it have (Gram and Schmidt, by stiffness), twice for
   * the sake of rounding. A mass far greater than the others draws all vectors into its own
   * movement; of a vector from which nothing is left another start is made.
   *
   * @param vectors changed to energy 1
   * @param images stiffness times vectors, changed likewise
   */
  private void separate(double[][] vectors, double[][] images) {
    Random random = new Random(2);
    for (int i = 0; i < vectors.length; i++) {
      double whole = dot(images[i], vectors[i]);
      double left = without(vectors, images, i);
      for (int again = 0; !(left > ROUNDING * whole) && again < MOST_ENLARGEMENTS; again++) {
        vectors[i] = start(random);
        unloaded.multiply(vectors[i], images[i]);
        whole = dot(images[i], vectors[i]);
        left = without(vectors, images, i);
      }
      double scale = 1 / Math.sqrt(left);
      for (int k = 0; k < size; k++) {
        vectors[i][k] *= scale;
        images[i][k] *= scale;
      }
    }
  }

  /** Twice the energy that is left of a vector. */
  private double without(double[][] vectors, double[][] images, int i) {
    for (int pass = 0; pass < 2; pass++) {
      for (int j = 0; j < i; j++) {
        double common = dot(images[j], vectors[i]);
        for (int k = 0; k < size; k++) {
          vectors[i][k] -= common * vectors[j][k];
          images[i][k] -= common * images[j][k];
        }
      }
    }
    return dot(images[i], vectors[i]);
  }

  /**
   * Solves the small problem.
   *
   * @param values overwritten, rising
   * @return the vectors as columns, in the same order
   */
  private static double[][] reduced(double[][] stiff, double[][] heavy, double[] values) {
    int n = values.length;
    symmetric(stiff);
    symmetric(heavy);
    double[] scale = new double[n];
    for (int i = 0; i < n; i++) {
      scale[i] = 1 / Math.sqrt(stiff[i][i]);
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        stiff[i][j] *= scale[i] * scale[j];
        heavy[i][j] *= scale[i] * scale[j];
      }
    }
    RealMatrix lower =
        new CholeskyDecomposition(new Array2DRowRealMatrix(stiff, false), 1e-9, 1e-13).getL();
    RealMatrix inverse = new LUDecomposition(lower).getSolver().getInverse();
    // Largest of heavy against stiff is the lowest frequency.
    double[][] small =
        inverse
            .multiply(new Array2DRowRealMatrix(heavy, false))
            .multiply(inverse.transpose())
            .getData();
    symmetric(small);
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(small, false));
    RealMatrix vectors = inverse.transpose().multiply(eigen.getV());
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    Arrays.sort(
        order, (a, b) -> Double.compare(eigen.getRealEigenvalue(b), eigen.getRealEigenvalue(a)));
    double[][] turn = new double[n][n];
    for (int i = 0; i < n; i++) {
      values[i] = 1 / eigen.getRealEigenvalue(order[i]);
      for (int j = 0; j < n; j++) {
        turn[j][i] = vectors.getEntry(j, order[i]) * scale[j];
      }
    }
    return turn;
  }

  private static void symmetric(double[][] matrix) {
    for (int i = 0; i < matrix.length; i++) {
      for (int j = 0; j < i; j++) {
        double mean = 0.5 * (matrix[i][j] + matrix[j][i]);
        matrix[i][j] = mean;
        matrix[j][i] = mean;
      }
    }
  }

  private static double[][] product(double[][] vectors, double[][] turn) {
    int size = vectors[0].length;
    double[][] result = new double[vectors.length][size];
    for (int i = 0; i < vectors.length; i++) {
      for (int j = 0; j < vectors.length; j++) {
        double by = turn[j][i];
        for (int k = 0; k < size; k++) {
          result[i][k] += by * vectors[j][k];
        }
      }
    }
    return result;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
