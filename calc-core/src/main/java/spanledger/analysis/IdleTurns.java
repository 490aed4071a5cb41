package spanledger.analysis;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import spanledger.frame.Vector;

/**
 * Finds turns of nodes on which no stiffness acts, about any axis.
 *
 * <p>The stiffness of a frame is a sum of parts that cannot be negative. If a node's own 3 x 3
 * block of turning stiffness vanishes for an axis, every part does, so turning the node about that
 * axis strains nothing anywhere: the turn may be held without changing anything else.
 */
public final class IdleTurns {

  /** Parts below this share of the node's greatest are rounding (double carries 2e-16). */
  private static final double ROUNDING = 1e-12;

  /**
   * An axis to hold.
   *
   * @param node place of the node
   * @param axis global, of length 1
   * @param stiffness any positive size; chosen like the stiffness around it
   */
  public record Hold(int node, Vector axis, double stiffness) {}

  private IdleTurns() {}

  static List<Hold> find(NodeStiffness stiffness, Holds holds, int nodeCount) {
    List<Hold> found = new ArrayList<>();
    for (int node = 0; node < nodeCount; node++) {
      if (stiffness.longest(node) > 0) {
        addIdle(node, stiffness, holds, found);
      }
    }
    return List.copyOf(found);
  }

  private static void addIdle(int node, NodeStiffness stiffness, Holds holds, List<Hold> found) {
    double[] block = new double[9];
    boolean[] fixed = new boolean[3];
    for (int i = 0; i < 3; i++) {
      fixed[i] = holds.isFixed(6 * node + 3 + i);
      for (int j = 0; j < 3; j++) {
        block[3 * i + j] = stiffness.turn(node, i, j);
      }
      block[4 * i] += holds.spring(6 * node + 3 + i);
    }
    double like = stiffness.shift(node) * Math.pow(stiffness.longest(node), 2);
    addIdle(node, block, fixed, like, found);
  }

  /**
   * Adds the turns of one node on which nothing acts.
   *
   * @param node place of the node
   * @param block its stiffness against turns, 3 x 3, row by row, support springs included
   * @param fixed which turns are held
   * @param like a stiffness to hold with where the node has none at all
   * @param found added to
   */
  public static void addIdle(
      int node, double[] block, boolean[] fixed, double like, List<Hold> found) {
    int[] free = new int[3];
    int count = 0;
    for (int i = 0; i < 3; i++) {
      if (!fixed[i]) {
        free[count++] = i;
      }
    }
    if (count == 0) {
      return;
    }
    double[][] part = new double[count][count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < count; j++) {
        part[i][j] = block[3 * free[i] + free[j]];
      }
    }
    if (surelyHeld(part)) {
      return;
    }
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(part, false));
    double greatest = 0;
    for (double value : eigen.getRealEigenvalues()) {
      greatest = Math.max(greatest, value);
    }
    for (int k = 0; k < count; k++) {
      if (eigen.getRealEigenvalue(k) <= ROUNDING * greatest) {
        double[] turn = new double[3];
        for (int i = 0; i < count; i++) {
          turn[free[i]] = eigen.getEigenvector(k).getEntry(i);
        }
        Vector axis = new Vector(turn[0], turn[1], turn[2]);
        found.add(new Hold(node, axis, greatest > 0 ? greatest : like));
      }
    }
  }

  /**
   * The least eigenvalue is at least the determinant per trace to the power of the others; if that
   * is well above rounding, nothing is idle. Most nodes are settled by this.
   */
  private static boolean surelyHeld(double[][] part) {
    double trace = 0;
    for (int i = 0; i < part.length; i++) {
      trace += part[i][i];
    }
    double determinant =
        switch (part.length) {
          case 1 -> part[0][0];
          case 2 -> part[0][0] * part[1][1] - part[0][1] * part[1][0];
          default -> cofactor(part, 0, 1, 2) + cofactor(part, 1, 2, 0) + cofactor(part, 2, 0, 1);
        };
    return determinant > 1e3 * ROUNDING * Math.pow(trace, part.length);
  }

  private static double cofactor(double[][] part, int column, int next, int last) {
    return part[0][column] * (part[1][next] * part[2][last] - part[1][last] * part[2][next]);
  }
}
