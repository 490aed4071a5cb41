package spanledger.analysis;

import java.util.Arrays;

/** Real roots of polynomials between 0 and 1. */
final class PolynomialRoots {

  private static final int HALVINGS = 60;

  private PolynomialRoots() {}

  /**
   * Adds the roots of c + b t + a t² that lie strictly between 0 and 1.
   *
   * @return the new count
   */
  static int quadratic(double c, double b, double a, double[] into, int count) {
    double discriminant = b * b - 4 * a * c;
    if (!(discriminant >= 0)) {
      return count;
    }
    // Adding like signs loses no digits; a vanishing a sends its own root to infinity.
    double q = -0.5 * (b + Math.copySign(Math.sqrt(discriminant), b));
    int after = inside(q / a, into, count);
    return inside(c / q, into, after);
  }

  private static int inside(double root, double[] into, int count) {
    if (root > 0 && root < 1) {
      into[count] = root;
      return count + 1;
    }
    return count;
  }

  /**
   * The places strictly between 0 and 1 where a polynomial changes sign.
   *
   * @param coefficients from the constant up, not modified
   */
  static double[] signChanges(double[] coefficients) {
    int degree = coefficients.length - 1;
    if (degree < 1) {
      return new double[0];
    }
    double[] derivative = new double[degree];
    for (int k = 1; k <= degree; k++) {
      derivative[k - 1] = k * coefficients[k];
    }
    // Between the turning points the polynomial only rises or only falls.
    double[] turns = signChanges(derivative);
    double[] found = new double[turns.length + 1];
    int count = 0;
    double from = 0;
    for (int i = 0; i <= turns.length; i++) {
      double to = i < turns.length ? turns[i] : 1;
      double atFrom = value(coefficients, from);
      double atTo = value(coefficients, to);
      if (atFrom < 0 != atTo < 0) {
        found[count++] = halve(coefficients, from, to, atFrom < 0);
      }
      from = to;
    }
    return Arrays.copyOf(found, count);
  }

  private static double halve(double[] coefficients, double from, double to, boolean rising) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (value(coefficients, middle) < 0 == rising) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  static double value(double[] coefficients, double t) {
    double sum = 0;
    for (int k = coefficients.length - 1; k >= 0; k--) {
      sum = sum * t + coefficients[k];
    }
    return sum;
  }
}
