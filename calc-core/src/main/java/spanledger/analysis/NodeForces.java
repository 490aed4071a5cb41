package spanledger.analysis;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * What a segment takes from its nodes, in global axes: the end forces turned into global axes, with
 * the moment of the arm added.
 *
 * <p>Inputs: cosines, arms, F_x1 .. M_z2. Steps end in R_X1 .. R_Z2 (forces) and S_X1 .. S_Z2
 * (moments).
 */
public final class NodeForces {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private NodeForces() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("node-forces", "Forces of a segment on global axes");
    Reference[][] axes = SegmentAxes.inputs(p);
    Reference[][] arms = SegmentAxes.armInputs(p);
    Reference[][] force = new Reference[2][3];
    Reference[][] moment = new Reference[2][3];
    for (int end = 0; end < 2; end++) {
      for (int i = 0; i < 3; i++) {
        force[end][i] =
            p.input(
                "F_" + SegmentAxes.LOCAL[i] + (end + 1),
                "force along " + SegmentAxes.LOCAL[i] + " at end " + (end + 1),
                Dimension.FORCE);
      }
      for (int i = 0; i < 3; i++) {
        moment[end][i] =
            p.input(
                "M_" + SegmentAxes.LOCAL[i] + (end + 1),
                "moment about " + SegmentAxes.LOCAL[i] + " at end " + (end + 1),
                Dimension.MOMENT);
      }
    }
    for (int end = 0; end < 2; end++) {
      Reference[] global = new Reference[3];
      for (int i = 0; i < 3; i++) {
        global[i] =
            p.step(
                "R_" + SegmentAxes.GLOBAL[i] + (end + 1),
                "force from node " + (end + 1) + " along " + SegmentAxes.GLOBAL[i],
                Dimension.FORCE,
                turned(axes, force[end], i),
                MechanicsSources.STATICS);
      }
      for (int i = 0; i < 3; i++) {
        int next = (i + 1) % 3;
        int last = (i + 2) % 3;
        p.step(
            "S_" + SegmentAxes.GLOBAL[i] + (end + 1),
            "moment from node " + (end + 1) + " about " + SegmentAxes.GLOBAL[i],
            Dimension.MOMENT,
            turned(axes, moment[end], i)
                .plus(arms[end][next].times(global[last]))
                .minus(arms[end][last].times(global[next])),
            MechanicsSources.STATICS);
      }
    }
    return p.build();
  }

  private static Expression turned(Reference[][] axes, Reference[] local, int global) {
    return axes[0][global]
        .times(local[0])
        .plus(axes[1][global].times(local[1]))
        .plus(axes[2][global].times(local[2]));
  }
}
