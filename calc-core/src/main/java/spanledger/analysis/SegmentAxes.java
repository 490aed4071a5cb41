package spanledger.analysis;

import spanledger.procedure.Expression;
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

  /** Twelve movements as inputs: u_X1, u_Y1, u_Z1, φ_X1 .. φ_Z2. */
  static Movements movementInputs(Procedure.Builder p) {
    return new Movements(p);
  }

  /** Movements of both nodes in global axes. */
  static final class Movements {
    private final Reference[][] shift = new Reference[2][3];
    private final Reference[][] turn = new Reference[2][3];

    private Movements(Procedure.Builder p) {
      for (int end = 0; end < 2; end++) {
        for (int i = 0; i < 3; i++) {
          shift[end][i] =
              p.input(
                  "u_" + GLOBAL[i] + (end + 1),
                  "shift of node " + (end + 1) + " along " + GLOBAL[i],
                  Dimension.LENGTH);
        }
        for (int i = 0; i < 3; i++) {
          turn[end][i] =
              p.input(
                  "φ_" + GLOBAL[i] + (end + 1),
                  "turn of node " + (end + 1) + " about " + GLOBAL[i],
                  Dimension.NONE);
        }
      }
    }

    /** By end, then by axis, mm. */
    Reference[][] shift() {
      return shift;
    }

    /** By end, then by axis, rad. */
    Reference[][] turn() {
      return turn;
    }

    /** Shift of a member end along a global axis: that of the node plus turn × arm. */
    Expression endShift(Reference[][] arms, int end, int axis) {
      int next = (axis + 1) % 3;
      int last = (axis + 2) % 3;
      return shift[end][axis]
          .plus(turn[end][next].times(arms[end][last]))
          .minus(turn[end][last].times(arms[end][next]));
    }
  }

  /** The part of a global vector along an axis. */
  static Expression along(Reference[] axis, Expression[] vector) {
    return axis[0].times(vector[0]).plus(axis[1].times(vector[1])).plus(axis[2].times(vector[2]));
  }
}
