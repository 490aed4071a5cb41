package spanledger.envelope;

import spanledger.analysis.SegmentModel;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.PointDisplacement;

/** How far points of a segment move along a direction, by the procedure. */
public final class PointMovement {

  private static final CompiledProcedure POINT = PointDisplacement.PROCEDURE.compile();
  private static final int X = POINT.slot("x");
  private static final int DIRECTION = POINT.slot("D_X");
  private static final int AXES = POINT.slot("y_X");
  private static final int ARMS = POINT.slot("a_X1");
  private static final int MOVEMENTS = POINT.slot("u_X1");
  private static final int D_Y = POINT.slot("d_y");
  private static final int DELTA = POINT.slot("δ");

  private final SegmentModel model;
  private final double[] slots = POINT.newSlots();

  /**
   * For one segment.
   *
   * @param direction global, of length 1
   */
  public PointMovement(SegmentModel model, Vector direction) {
    this.model = model;
    slots[X + 1] = model.length();
    put(DIRECTION, direction);
    put(AXES, model.axisY());
    put(AXES + 3, model.axisZ());
    put(ARMS, model.segment().start().offset());
    put(ARMS + 3, model.segment().end().offset());
  }

  private void put(int at, Vector vector) {
    slots[at] = vector.x();
    slots[at + 1] = vector.y();
    slots[at + 2] = vector.z();
  }

  /** Whether a place lies within the segment; its ends are on its chord by definition. */
  public boolean isWithin(double x) {
    return x > 0 && x < model.length();
  }

  /**
   * The movement, mm.
   *
   * @param x place from the segment's start, mm
   * @param movements of its nodes, 12, not modified
   * @param deflectionY from the chord along y, mm
   * @param deflectionZ from the chord along z, mm
   */
  public double at(double x, double[] movements, double deflectionY, double deflectionZ) {
    slots[X] = x;
    System.arraycopy(movements, 0, slots, MOVEMENTS, SegmentModel.ENDS);
    slots[D_Y] = deflectionY;
    slots[D_Y + 1] = deflectionZ;
    POINT.evaluate(slots);
    return slots[DELTA];
  }
}
