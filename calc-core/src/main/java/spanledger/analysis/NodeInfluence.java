package spanledger.analysis;

import spanledger.frame.Freedom;
import spanledger.frame.Node;

/**
 * What each unit force and unit moment on one node does to the whole frame. Immutable.
 *
 * <p>It takes 36 numbers per node and per segment of the frame; drop it when no lane near its node
 * is left.
 */
public final class NodeInfluence {

  private final Node node;
  private final double[][] movements;
  private final double[][] startForces;

  /** Solves for the six unit loads on a node. */
  public NodeInfluence(FrameAnalysis analysis, Node node) {
    this.node = node;
    movements = new double[6][6 * analysis.frame().nodes().size()];
    double[] work = new double[analysis.unknowns()];
    for (Freedom freedom : Freedom.values()) {
      analysis.solveUnit(node, freedom, movements[freedom.ordinal()], work);
    }
    startForces = new double[6][6 * analysis.models().size()];
    double[] ends = new double[SegmentModel.ENDS];
    for (SegmentModel model : analysis.models()) {
      int[] nodes = analysis.ends(model.segment());
      for (int freedom = 0; freedom < 6; freedom++) {
        SegmentModel.gather(movements[freedom], nodes[0], nodes[1], ends);
        model.startForces(ends, startForces[freedom], 6 * model.segment().index());
      }
    }
  }

  /** The loaded node. */
  public Node node() {
    return node;
  }

  /** Movements under the unit load of one freedom, six per node; not to be modified. */
  public double[] movements(int freedom) {
    return movements[freedom];
  }

  /**
   * Forces at end 1 of every segment under the unit load of one freedom, six per segment; not to be
   * modified.
   */
  public double[] startForces(int freedom) {
    return startForces[freedom];
  }
}
