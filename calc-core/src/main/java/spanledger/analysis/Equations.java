package spanledger.analysis;

import java.util.Arrays;

/** The unknown movements: freedoms that are not fixed, node by node in order of elimination. */
final class Equations {

  static final int NONE = -1;

  private final int[] order;
  private final int[] equation;
  private final int[] freedom;

  Equations(int[] order, Holds holds) {
    this.order = order;
    this.equation = new int[6 * order.length];
    int[] found = new int[equation.length];
    int count = 0;
    for (int node : order) {
      for (int i = 6 * node; i < 6 * node + 6; i++) {
        if (holds.isFixed(i)) {
          equation[i] = NONE;
        } else {
          equation[i] = count;
          found[count++] = i;
        }
      }
    }
    this.freedom = Arrays.copyOf(found, count);
  }

  /** The nodes in order of elimination. */
  int[] order() {
    return order;
  }

  int count() {
    return freedom.length;
  }

  /** The equation of a freedom (6 per node), or {@link #NONE}. */
  int of(int freedomIndex) {
    return equation[freedomIndex];
  }

  /** The freedom that an equation stands for. */
  int freedom(int equationIndex) {
    return freedom[equationIndex];
  }
}
