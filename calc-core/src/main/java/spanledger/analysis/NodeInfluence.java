package spanledger.analysis;

import spanledger.frame.Freedom;
import spanledger.frame.Node;

/**
 * How the whole frame moves under each unit force and unit moment on one node. Immutable.
 *
 * <p>It takes 36 numbers per node of the frame; drop it when no lane near its node is left.
 */
public final class NodeInfluence {

  private final Node node;
  private final double[][] movements;

  /** Solves for the six unit loads on a node. */
  public NodeInfluence(FrameAnalysis analysis, Node node) {
    this.node = node;
    movements = new double[6][6 * analysis.frame().nodes().size()];
    double[] work = new double[analysis.unknowns()];
    for (Freedom freedom : Freedom.values()) {
      analysis.solveUnit(node, freedom, movements[freedom.ordinal()], work);
    }
  }

  /** The loaded node. */
  public Node node() {
    return node;
  }

  /** Movements under the unit load of one freedom, six per node; not to be modified. */
  double[] movements(int freedom) {
    return movements[freedom];
  }
}
