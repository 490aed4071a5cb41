package spanledger.analysis;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * What a segment's axial force takes from its nodes because its arms turn with them: the second
 * order part of the movement of the arms' tips, ½ φ × (φ × a), lengthens or shortens the segment.
 *
 * <p>Inputs: N, the cosines of x, the arms and the turns of the nodes. Steps A_X1 .. A_Z2, moments
 * to be added to those of {@link NodeForces}.
 */
public final class ArmTilt {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private ArmTilt() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("arm-tilt", "Moments of the axial force on turned arms");
    Reference force = p.input("N", "mean axial force, tension positive", Dimension.FORCE);
    Reference[] x = new Reference[3];
    for (int i = 0; i < 3; i++) {
      x[i] =
          p.input(
              "x_" + SegmentAxes.GLOBAL[i],
              "cosine between x and global " + SegmentAxes.GLOBAL[i],
              Dimension.NONE);
    }
    Reference[][] arms = SegmentAxes.armInputs(p);
    Reference[][] turn = new Reference[2][3];
    for (int end = 0; end < 2; end++) {
      for (int i = 0; i < 3; i++) {
        turn[end][i] =
            p.input(
                "φ_" + SegmentAxes.GLOBAL[i] + (end + 1),
                "turn of node " + (end + 1) + " about " + SegmentAxes.GLOBAL[i],
                Dimension.NONE);
      }
    }
    for (int end = 0; end < 2; end++) {
      for (int i = 0; i < 3; i++) {
        // x·(φ × (φ × a))/2 = ((x·φ)(φ·a) - (x·a) φ²)/2, and its derivative by φ.
        Expression moment =
            arms[end][i]
                .times(dot(x, turn[end]))
                .plus(x[i].times(dot(arms[end], turn[end])))
                .over(2)
                .minus(dot(x, arms[end]).times(turn[end][i]));
        p.step(
            "A_" + SegmentAxes.GLOBAL[i] + (end + 1),
            "moment from node " + (end + 1) + " about " + SegmentAxes.GLOBAL[i],
            Dimension.MOMENT,
            end == 0 ? force.times(moment).negated() : force.times(moment),
            MechanicsSources.STATICS);
      }
    }
    return p.build();
  }

  private static Expression dot(Reference[] a, Reference[] b) {
    return a[0].times(b[0]).plus(a[1].times(b[1])).plus(a[2].times(b[2]));
  }
}
