package spanledger.analysis;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The six basic deformations of a segment from the movements of its nodes.
 *
 * <p>Inputs: L, the nine direction cosines, the arms, and the movements of both nodes in global
 * axes (u_X1.. shifts, φ_X1.. turns). Steps end in e (stretch), φ (twist), θ_y1, θ_y2 (turns of the
 * ends from the chord about y) and θ_z1, θ_z2.
 */
public final class BasicDeformations {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BasicDeformations() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("basic-deformations", "Deformations of a segment from its nodes");
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference[][] axes = SegmentAxes.inputs(p);
    Reference[][] arms = SegmentAxes.armInputs(p);
    Reference[][] shift = new Reference[2][3];
    Reference[][] turn = new Reference[2][3];
    for (int end = 0; end < 2; end++) {
      for (int i = 0; i < 3; i++) {
        shift[end][i] =
            p.input(
                "u_" + SegmentAxes.GLOBAL[i] + (end + 1),
                "shift of node " + (end + 1) + " along " + SegmentAxes.GLOBAL[i],
                Dimension.LENGTH);
      }
      for (int i = 0; i < 3; i++) {
        turn[end][i] =
            p.input(
                "φ_" + SegmentAxes.GLOBAL[i] + (end + 1),
                "turn of node " + (end + 1) + " about " + SegmentAxes.GLOBAL[i],
                Dimension.NONE);
      }
    }
    Reference[] relative = new Reference[3];
    for (int i = 0; i < 3; i++) {
      relative[i] =
          p.step(
              "δ_" + SegmentAxes.GLOBAL[i],
              "shift of the far member end past the near one along " + SegmentAxes.GLOBAL[i],
              Dimension.LENGTH,
              endShift(shift[1], turn[1], arms[1], i)
                  .minus(endShift(shift[0], turn[0], arms[0], i)),
              MechanicsSources.STATICS);
    }
    p.step("e", "stretch", Dimension.LENGTH, along(axes[0], relative), MechanicsSources.STATICS);
    p.step(
        "φ",
        "twist",
        Dimension.NONE,
        along(axes[0], turn[1]).minus(along(axes[0], turn[0])),
        MechanicsSources.STATICS);
    Reference chordZ =
        p.step(
            "ψ_z",
            "slope of the chord in the x-z plane",
            Dimension.NONE,
            along(axes[2], relative).over(length),
            MechanicsSources.STATICS);
    Reference chordY =
        p.step(
            "ψ_y",
            "slope of the chord in the x-y plane",
            Dimension.NONE,
            along(axes[1], relative).over(length),
            MechanicsSources.STATICS);
    for (int end = 0; end < 2; end++) {
      // A positive turn about y lowers the far end, so the chord's slope adds.
      endTurn(p, "y" + (end + 1), along(axes[1], turn[end]).plus(chordZ));
    }
    for (int end = 0; end < 2; end++) {
      endTurn(p, "z" + (end + 1), along(axes[2], turn[end]).minus(chordY));
    }
    return p.build();
  }

  /** Shift of a member end along one axis: that of the node plus turn × arm. */
  private static Expression endShift(
      Reference[] shift, Reference[] turn, Reference[] arm, int axis) {
    int next = (axis + 1) % 3;
    int last = (axis + 2) % 3;
    return shift[axis].plus(turn[next].times(arm[last])).minus(turn[last].times(arm[next]));
  }

  private static Expression along(Reference[] axis, Reference[] vector) {
    return axis[0].times(vector[0]).plus(axis[1].times(vector[1])).plus(axis[2].times(vector[2]));
  }

  private static void endTurn(Procedure.Builder p, String mark, Expression formula) {
    p.step(
        "θ_" + mark,
        "turn of end " + mark.charAt(1) + " from the chord about " + mark.charAt(0),
        Dimension.NONE,
        formula,
        MechanicsSources.STATICS);
  }
}
