package spanledger.analysis;

import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;
import spanledger.frame.Support;

/** What the supports do at each freedom of each node. */
final class Holds {

  private final boolean[] fixed;
  private final double[] spring;
  private final boolean[] supported;

  /**
   * Reads the supports.
   *
   * @throws IllegalArgumentException if a node has two supports
   */
  Holds(Frame frame) {
    int count = 6 * frame.nodes().size();
    fixed = new boolean[count];
    spring = new double[count];
    supported = new boolean[frame.nodes().size()];
    for (Support support : frame.supports()) {
      int node = frame.indexOf(support.node());
      if (supported[node]) {
        throw new IllegalArgumentException(
            "Node " + support.node().name() + " has two supports. Give it one.");
      }
      supported[node] = true;
      for (Freedom freedom : Freedom.values()) {
        int at = 6 * node + freedom.ordinal();
        Restraint restraint = support.restraint(freedom).engaged();
        fixed[at] = restraint instanceof Restraint.Fixed;
        if (restraint instanceof Restraint.Spring held) {
          spring[at] = held.stiffness();
        }
      }
    }
  }

  /** Whether a freedom (6 per node) cannot move. */
  boolean isFixed(int freedom) {
    return fixed[freedom];
  }

  /** The stiffness of the support at a freedom; 0 where it is free or fixed. */
  double spring(int freedom) {
    return spring[freedom];
  }

  /** Whether the node has a support. */
  boolean isSupported(int node) {
    return supported[node];
  }

  /** Whether the support does anything at the freedom. */
  boolean acts(int freedom) {
    return fixed[freedom] || spring[freedom] > 0;
  }
}
