package spanledger.analysis;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;

/**
 * Finds the coefficients of a polynomial on 0 to 1 from its values at as many places inside, so
 * that what is a polynomial by its nature need not be written out a second time.
 */
final class SampledPolynomial {

  private final int size;
  private final double[] inverse;

  /**
   * @param size how many coefficients
   */
  SampledPolynomial(int size) {
    this.size = size;
    double[][] powers = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < size; k++) {
        powers[i][k] = Math.pow(place(i), k);
      }
    }
    double[][] solved = MatrixUtils.inverse(new Array2DRowRealMatrix(powers)).getData();
    inverse = new double[size * size];
    for (int k = 0; k < size; k++) {
      System.arraycopy(solved[k], 0, inverse, k * size, size);
    }
  }

  /** Where to take value {@code i}: never at an end, where a value may jump. */
  double place(int i) {
    return 0.5 - 0.5 * Math.cos(Math.PI * (i + 0.5) / size);
  }

  /**
   * Coefficients from the constant up.
   *
   * @param values at the places, not modified
   * @param into overwritten from {@code at} on
   */
  void fit(double[] values, double[] into, int at) {
    for (int k = 0; k < size; k++) {
      double sum = 0;
      for (int i = 0; i < size; i++) {
        sum += inverse[k * size + i] * values[i];
      }
      into[at + k] = sum;
    }
  }
}
