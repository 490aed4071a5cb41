package spanledger.envelope;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;

/**
 * Polynomials of the fourth degree from 0 to 1, known by their values at five evenly spaced places,
 * and their control points: the polynomial lies in the hull of these, which makes bounds.
 */
final class Quartic {

  /** How many values; both ends are among the places. */
  static final int SAMPLES = 5;

  private static final double[] BINOMIALS = {1, 4, 6, 4, 1};
  private static final double[][] CONTROL = control();
  private static final double[][] POWERS = powers();

  private Quartic() {}

  static double place(int sample) {
    return sample / (SAMPLES - 1.0);
  }

  private static double[][] control() {
    double[][] basis = new double[SAMPLES][SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      double t = place(i);
      for (int j = 0; j < SAMPLES; j++) {
        basis[i][j] = BINOMIALS[j] * Math.pow(t, j) * Math.pow(1 - t, SAMPLES - 1 - j);
      }
    }
    return inverse(basis);
  }

  private static double[][] powers() {
    double[][] basis = new double[SAMPLES][SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      for (int j = 0; j < SAMPLES; j++) {
        basis[i][j] = Math.pow(place(i), j);
      }
    }
    return inverse(basis);
  }

  private static double[][] inverse(double[][] matrix) {
    return MatrixUtils.inverse(new Array2DRowRealMatrix(matrix)).getData();
  }

  /**
   * The control points of several polynomials.
   *
   * @param values sample by sample, {@code count} each; not modified
   * @param into control point by control point, {@code count} each; overwritten
   */
  static void controlPoints(double[] values, int count, double[] into) {
    for (int j = 0; j < SAMPLES; j++) {
      for (int k = 0; k < count; k++) {
        double sum = 0;
        for (int i = 0; i < SAMPLES; i++) {
          sum += CONTROL[j][i] * values[i * count + k];
        }
        into[j * count + k] = sum;
      }
    }
  }

  /**
   * The values of several polynomials at a place.
   *
   * @param values sample by sample, {@code count} each; not modified
   * @param t from 0 to 1
   * @param into overwritten
   */
  static void at(double[] values, int count, double t, double[] into) {
    for (int k = 0; k < count; k++) {
      into[k] = 0;
    }
    for (int i = 0; i < SAMPLES; i++) {
      double weight = 0;
      for (int j = SAMPLES - 1; j >= 0; j--) {
        weight = weight * t + POWERS[j][i];
      }
      for (int k = 0; k < count; k++) {
        into[k] += weight * values[i * count + k];
      }
    }
  }

  /** The greatest control point of one polynomial times a sign: nothing on it is greater. */
  static double bound(double[] values, int sign) {
    double greatest = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < SAMPLES; j++) {
      double sum = 0;
      for (int i = 0; i < SAMPLES; i++) {
        sum += sign * CONTROL[j][i] * values[i];
      }
      greatest = Math.max(greatest, sum);
    }
    return greatest;
  }

  /**
   * The place of the greatest value of one polynomial times a sign.
   *
   * @param values at the five places, not modified
   */
  static double peak(double[] values, int sign) {
    double[] coefficients = new double[SAMPLES];
    for (int j = 0; j < SAMPLES; j++) {
      for (int i = 0; i < SAMPLES; i++) {
        coefficients[j] += sign * POWERS[j][i] * values[i];
      }
    }
    double best = 0;
    double greatest = sign * values[0];
    if (sign * values[SAMPLES - 1] > greatest) {
      greatest = sign * values[SAMPLES - 1];
      best = 1;
    }
    // The slope is a cubic: its sign changes are met by halving between fine steps.
    int steps = 16;
    double before = coefficients[1];
    for (int i = 1; i <= steps; i++) {
      double t = i / (double) steps;
      double slope = slope(coefficients, t);
      if (before > 0 && slope <= 0) {
        double root = root(coefficients, t - 1.0 / steps, t);
        double value = value(coefficients, root);
        if (value > greatest) {
          greatest = value;
          best = root;
        }
      }
      before = slope;
    }
    return best;
  }

  private static double root(double[] c, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < 40; i++) {
      double middle = 0.5 * (low + high);
      if (slope(c, middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private static double slope(double[] c, double t) {
    return c[1] + t * (2 * c[2] + t * (3 * c[3] + t * 4 * c[4]));
  }

  private static double value(double[] c, double t) {
    return c[0] + t * (c[1] + t * (c[2] + t * (c[3] + t * c[4])));
  }
}
