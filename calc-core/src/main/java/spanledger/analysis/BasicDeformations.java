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
    SegmentAxes.Movements moved = SegmentAxes.movementInputs(p);
    Reference[][] turn = moved.turn();
    Reference[] relative = new Reference[3];
    for (int i = 0; i < 3; i++) {
      relative[i] =
          p.step(
              "δ_" + SegmentAxes.GLOBAL[i],
              "shift of the far member end past the near one along " + SegmentAxes.GLOBAL[i],
              Dimension.LENGTH,
              moved.endShift(arms, 1, i).minus(moved.endShift(arms, 0, i)),
              MechanicsSources.STATICS);
    }
    p.step(
        "e",
        "stretch",
        Dimension.LENGTH,
        SegmentAxes.along(axes[0], relative),
        MechanicsSources.STATICS);
    p.step(
        "φ",
        "twist",
        Dimension.NONE,
        SegmentAxes.along(axes[0], turn[1]).minus(SegmentAxes.along(axes[0], turn[0])),
        MechanicsSources.STATICS);
    Reference chordZ =
        p.step(
            "ψ_z",
            "slope of the chord in the x-z plane",
            Dimension.NONE,
            SegmentAxes.along(axes[2], relative).over(length),
            MechanicsSources.STATICS);
    Reference chordY =
        p.step(
            "ψ_y",
            "slope of the chord in the x-y plane",
            Dimension.NONE,
            SegmentAxes.along(axes[1], relative).over(length),
            MechanicsSources.STATICS);
    for (int end = 0; end < 2; end++) {
      // A positive turn about y lowers the far end, so the chord's slope adds.
      endTurn(p, "y" + (end + 1), SegmentAxes.along(axes[1], turn[end]).plus(chordZ));
    }
    for (int end = 0; end < 2; end++) {
      endTurn(p, "z" + (end + 1), SegmentAxes.along(axes[2], turn[end]).minus(chordY));
    }
    return p.build();
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
