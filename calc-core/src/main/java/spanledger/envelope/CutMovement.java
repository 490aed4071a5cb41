package spanledger.envelope;

import java.util.Arrays;
import java.util.List;
import spanledger.analysis.ChordDeflection;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.WeightedLoad;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.PointDisplacement;
import spanledger.section.SectionProperties;

/** How far a cut moves along a direction; reuses its arrays, so one per thread. */
final class CutMovement {

  private static final CompiledProcedure CHORD = ChordDeflection.PROCEDURE.compile();
  private static final CompiledProcedure POINT = PointDisplacement.PROCEDURE.compile();
  private static final int CHORD_X = CHORD.slot("x");
  private static final int PLANE_Y = CHORD.slot("F_y1");
  private static final int PLANE_Z = CHORD.slot("F_z1");
  private static final int D_Y = CHORD.slot("d_y");
  private static final int D_Z = CHORD.slot("d_z");
  private static final int POINT_X = POINT.slot("x");
  private static final int DIRECTION = POINT.slot("D_X");
  private static final int AXES = POINT.slot("y_X");
  private static final int ARMS = POINT.slot("a_X1");
  private static final int MOVEMENTS = POINT.slot("u_X1");
  private static final int POINT_D_Y = POINT.slot("d_y");
  private static final int DELTA = POINT.slot("δ");

  private final double[] chord = CHORD.newSlots();
  private final double[] point = POINT.newSlots();
  private final double[] before = new double[7];
  private final double[] moments = new double[SegmentModel.LOAD_MOMENTS];

  /**
   * The movement of a cut, mm.
   *
   * @param movements the 12 movements of the segment's nodes, not modified
   * @param endForces forces on end 1, six from {@code at} on, not modified
   * @param loads on the segment, with their factors
   * @param x place of the cut, mm
   * @param direction global, of length 1
   */
  double along(
      SegmentModel model,
      double[] movements,
      double[] endForces,
      int at,
      List<WeightedLoad> loads,
      double x,
      Vector direction) {
    // At its ends a segment is on its chord by definition.
    boolean inside = x > 0 && x < model.length();
    if (inside) {
      fillChord(model, endForces, at, loads, x);
      CHORD.evaluate(chord);
    }
    point[POINT_X] = x;
    point[POINT_X + 1] = model.length();
    put(point, DIRECTION, direction);
    put(point, AXES, model.axisY());
    put(point, AXES + 3, model.axisZ());
    put(point, ARMS, model.segment().start().offset());
    put(point, ARMS + 3, model.segment().end().offset());
    System.arraycopy(movements, 0, point, MOVEMENTS, SegmentModel.ENDS);
    point[POINT_D_Y] = inside ? chord[D_Y] : 0;
    point[POINT_D_Y + 1] = inside ? chord[D_Z] : 0;
    POINT.evaluate(point);
    return point[DELTA];
  }

  private void fillChord(
      SegmentModel model, double[] endForces, int at, List<WeightedLoad> loads, double x) {
    Segment segment = model.segment();
    SectionProperties section = segment.member().section().properties();
    chord[CHORD_X] = x;
    chord[CHORD_X + 1] = model.length();
    chord[CHORD_X + 2] = segment.member().alloy().youngsModulus();
    chord[CHORD_X + 3] = segment.member().alloy().shearModulus();
    chord[CHORD_X + 4] = section.secondMomentY();
    chord[CHORD_X + 5] = section.secondMomentZ();
    chord[CHORD_X + 6] = section.shearAreaY();
    chord[CHORD_X + 7] = section.shearAreaZ();
    Arrays.fill(before, 0);
    Arrays.fill(moments, 0);
    for (WeightedLoad load : loads) {
      load.load().addBefore(x, load.weight(), before);
      load.load().addMoments(load.weight(), moments);
    }
    chord[PLANE_Y] = endForces[at + 1];
    chord[PLANE_Y + 1] = endForces[at + 5];
    chord[PLANE_Y + 2] = before[2];
    chord[PLANE_Y + 3] = before[3];
    System.arraycopy(moments, 2, chord, PLANE_Y + 4, 4);
    chord[PLANE_Z] = endForces[at + 2];
    chord[PLANE_Z + 1] = endForces[at + 4];
    chord[PLANE_Z + 2] = before[5];
    chord[PLANE_Z + 3] = before[6];
    System.arraycopy(moments, 6, chord, PLANE_Z + 4, 4);
  }

  private static void put(double[] slots, int at, Vector vector) {
    slots[at] = vector.x();
    slots[at + 1] = vector.y();
    slots[at + 2] = vector.z();
  }
}
