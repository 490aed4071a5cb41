package spanledger.analysis;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * A load's direction in the axes of its segment.
 *
 * <p>Inputs: the segment's cosines, and the global direction D_X, D_Y, D_Z. Steps d_x, d_y, d_z.
 */
public final class LoadDirection {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private LoadDirection() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("load-direction", "Direction of a load on its segment");
    Reference[][] axes = SegmentAxes.inputs(p);
    Reference[] direction = new Reference[3];
    for (int i = 0; i < 3; i++) {
      direction[i] =
          p.input(
              "D_" + SegmentAxes.GLOBAL[i],
              "direction along global " + SegmentAxes.GLOBAL[i],
              Dimension.NONE);
    }
    for (int axis = 0; axis < 3; axis++) {
      p.step(
          "d_" + SegmentAxes.LOCAL[axis],
          "part of the load along " + SegmentAxes.LOCAL[axis],
          Dimension.NONE,
          direction[0]
              .times(axes[axis][0])
              .plus(direction[1].times(axes[axis][1]))
              .plus(direction[2].times(axes[axis][2])),
          MechanicsSources.GEOMETRY);
    }
    return p.build();
  }
}
