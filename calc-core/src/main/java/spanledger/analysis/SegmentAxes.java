package spanledger.analysis;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** The inputs by which procedures take a segment's axes and arms. */
final class SegmentAxes {

  static final String[] GLOBAL = {"X", "Y", "Z"};
  static final String[] LOCAL = {"x", "y", "z"};

  private SegmentAxes() {}

  /** Nine cosines: by local axis, then by global axis. */
  static Reference[][] inputs(Procedure.Builder p) {
    Reference[][] axes = new Reference[3][3];
    for (int local = 0; local < 3; local++) {
      for (int global = 0; global < 3; global++) {
        axes[local][global] =
            p.input(
                LOCAL[local] + "_" + GLOBAL[global],
                "cosine between " + LOCAL[local] + " and global " + GLOBAL[global],
                Dimension.NONE);
      }
    }
    return axes;
  }

  /** Six arm components: by end, then by global axis. */
  static Reference[][] armInputs(Procedure.Builder p) {
    Reference[][] arms = new Reference[2][3];
    for (int end = 0; end < 2; end++) {
      for (int i = 0; i < 3; i++) {
        arms[end][i] =
            p.input(
                "a_" + GLOBAL[i] + (end + 1),
                "arm at node " + (end + 1) + " along " + GLOBAL[i],
                Dimension.LENGTH);
      }
    }
    return arms;
  }
}
