package spanledger.analysis;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Finds the places along a segment where a sum of effects may be greatest or least. */
final class StationSearch {

  /** Deflections are of the fifth degree: loads are linear in x. */
  private static final SampledPolynomial QUINTIC = new SampledPolynomial(6);

  private final SegmentResponse response;
  private final LoadCurve curve;
  private double[] found;
  private int count;

  StationSearch(SegmentResponse response) {
    this.response = response;
    this.curve = response.curve();
    this.found = new double[9 * curve.pieces() + 1];
  }

  /** Of one internal force. */
  double[] turningPoints(int force) {
    for (int piece = 0; piece < curve.pieces(); piece++) {
      found[count++] = curve.breakAt(piece);
      int from = count;
      count =
          PolynomialRoots.quadratic(
              slope(piece, force, 0), slope(piece, force, 1), slope(piece, force, 2), found, count);
      place(piece, from);
    }
    return finished();
  }

  /** Adds those of {@code a·share ± b·share ± c·share} for all signs; shares are not negative. */
  void addTurningPoints(int a, double ofA, int b, double ofB, int c, double ofC) {
    found = Arrays.copyOf(found, found.length + 9 * curve.pieces());
    for (int piece = 0; piece < curve.pieces(); piece++) {
      found[count++] = curve.breakAt(piece);
      int from = count;
      for (int signs = 0; signs < (ofC == 0 ? 2 : 4); signs++) {
        double signedB = (signs & 1) == 0 ? ofB : -ofB;
        double signedC = (signs & 2) == 0 ? ofC : -ofC;
        count =
            PolynomialRoots.quadratic(
                ofA * slope(piece, a, 0)
                    + signedB * slope(piece, b, 0)
                    + signedC * slope(piece, c, 0),
                ofA * slope(piece, a, 1)
                    + signedB * slope(piece, b, 1)
                    + signedC * slope(piece, c, 1),
                ofA * slope(piece, a, 2)
                    + signedB * slope(piece, b, 2)
                    + signedC * slope(piece, c, 2),
                found,
                count);
      }
      place(piece, from);
    }
  }

  /** Whether an internal force changes between the places where it may jump. */
  boolean changes(int force) {
    for (int piece = 0; piece < curve.pieces(); piece++) {
      for (int k = 0; k < 3; k++) {
        if (slope(piece, force, k) != 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Of anything that is of at most the fifth degree between breaks. */
  double[] turningPoints(DoubleUnaryOperator effect) {
    double[] values = new double[6];
    double[] coefficients = new double[6];
    double[] derivative = new double[5];
    for (int piece = 0; piece < curve.pieces(); piece++) {
      found[count++] = curve.breakAt(piece);
      double span = curve.breakAt(piece + 1) - curve.breakAt(piece);
      for (int i = 0; i < values.length; i++) {
        values[i] = effect.applyAsDouble(curve.breakAt(piece) + QUINTIC.place(i) * span);
      }
      QUINTIC.fit(values, coefficients, 0);
      for (int k = 0; k < derivative.length; k++) {
        derivative[k] = (k + 1) * coefficients[k + 1];
      }
      int from = count;
      for (double root : PolynomialRoots.signChanges(derivative)) {
        found[count++] = root;
      }
      place(piece, from);
    }
    return finished();
  }

  /** Coefficient of the change of an internal force over one piece, from 0 to 1. */
  private double slope(int piece, int force, int term) {
    double own = (term + 1) * curve.coefficient(piece, force, term + 1);
    return term > 0
        ? own
        : own + response.slope(force) * (curve.breakAt(piece + 1) - curve.breakAt(piece));
  }

  private void place(int piece, int from) {
    double start = curve.breakAt(piece);
    double span = curve.breakAt(piece + 1) - start;
    for (int i = from; i < count; i++) {
      found[i] = start + found[i] * span;
    }
  }

  /** All that were added, in order, with the ends. */
  double[] finished() {
    found[count++] = curve.breakAt(curve.pieces());
    found = Arrays.copyOf(found, count);
    Arrays.sort(found);
    return found;
  }
}
