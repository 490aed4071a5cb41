package spanledger.vibration;

import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Vector;

/**
 * The consistent mass of a piece of a member with an even mass along it: what its movement between
 * two nodes, bent by a cubic line, takes to be set in motion.
 *
 * <p>A joint that is not rigid lets the bar's end turn by itself; the bar then takes the line of
 * the least strain, as in the stiffness.
 *
 * <p>Reference: J. S. Archer, "Consistent mass matrix for distributed mass systems", J. Struct.
 * Div. ASCE 89 (1963), ST4, pp. 161-178 (from memory). Turning inertia of cross-sections counts in
 * twisting only.
 */
final class PieceMass {

  private static final int ENDS = SegmentModel.ENDS;

  /** ∫ of products of the shapes 1-ξ, ξ, ξ(1-ξ)², -ξ²(1-ξ). */
  private static final double[][] SHAPES = {
    {1.0 / 3, 1.0 / 6, 1.0 / 20, -1.0 / 30},
    {1.0 / 6, 1.0 / 3, 1.0 / 30, -1.0 / 20},
    {1.0 / 20, 1.0 / 30, 1.0 / 105, -1.0 / 140},
    {-1.0 / 30, -1.0 / 20, -1.0 / 140, 1.0 / 105}
  };

  private PieceMass() {}

  /**
   * Adds the mass matrix of a piece.
   *
   * @param mass of the whole piece, kg
   * @param polar inertia of the whole piece about its axis, kg·mm²
   * @param into 12 x 12, added to
   */
  static void add(BeamColumnModel bar, double mass, double polar, double[] into) {
    SegmentModel model = bar.model();
    double[][] shifts = new double[3][2 * ENDS];
    Vector[] axes = {model.axisX(), model.axisY(), model.axisZ()};
    for (int axis = 0; axis < 3; axis++) {
      shifts[axis] = endShifts(model, axes[axis]);
    }
    addProducts(rows(shifts[0], new double[2 * ENDS]), mass, into);
    addProducts(rows(shifts[1], bends(bar, 1)), mass, into);
    addProducts(rows(shifts[2], bends(bar, 0)), mass, into);
    double[] first = new double[ENDS];
    double[] second = new double[ENDS];
    double[] x = {axes[0].x(), axes[0].y(), axes[0].z()};
    for (int i = 0; i < 3; i++) {
      first[3 + i] = x[i];
      second[9 + i] = x[i];
    }
    for (int i = 0; i < ENDS; i++) {
      for (int j = 0; j < ENDS; j++) {
        into[i * ENDS + j] +=
            polar
                * (first[i] * first[j] / 3
                    + second[i] * second[j] / 3
                    + (first[i] * second[j] + second[i] * first[j]) / 6);
      }
    }
  }

  /** Shifts of both member ends along an axis: that of the node plus turn × arm; 2 x 12. */
  private static double[] endShifts(SegmentModel model, Vector axis) {
    double[] rows = new double[2 * ENDS];
    Vector[] arms = {model.segment().start().offset(), model.segment().end().offset()};
    for (int end = 0; end < 2; end++) {
      int at = end * ENDS + 6 * end;
      Vector turning = arms[end].cross(axis);
      put(rows, at, axis);
      put(rows, at + 3, turning);
    }
    return rows;
  }

  private static void put(double[] rows, int at, Vector vector) {
    rows[at] = vector.x();
    rows[at + 1] = vector.y();
    rows[at + 2] = vector.z();
  }

  /** Slopes of the bar's ends from the chord, times the length; 2 x 12. */
  private static double[] bends(BeamColumnModel bar, int axis) {
    double[] turns = bar.barTurns(axis);
    // A positive turn about y lowers the far end; about z it lifts it.
    double sign = axis == 0 ? -1 : 1;
    for (int i = 0; i < turns.length; i++) {
      turns[i] *= sign * bar.model().length();
    }
    return turns;
  }

  private static double[][] rows(double[] shifts, double[] bends) {
    double[][] rows = new double[4][ENDS];
    System.arraycopy(shifts, 0, rows[0], 0, ENDS);
    System.arraycopy(shifts, ENDS, rows[1], 0, ENDS);
    System.arraycopy(bends, 0, rows[2], 0, ENDS);
    System.arraycopy(bends, ENDS, rows[3], 0, ENDS);
    return rows;
  }

  private static void addProducts(double[][] rows, double mass, double[] into) {
    for (int a = 0; a < rows.length; a++) {
      for (int b = 0; b < rows.length; b++) {
        double share = mass * SHAPES[a][b];
        for (int i = 0; i < ENDS; i++) {
          double left = share * rows[a][i];
          if (left != 0) {
            for (int j = 0; j < ENDS; j++) {
              into[i * ENDS + j] += left * rows[b][j];
            }
          }
        }
      }
    }
  }
}
