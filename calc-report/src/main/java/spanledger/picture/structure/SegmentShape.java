package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.BeamColumnResponse;
import spanledger.analysis.InternalForces;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.Side;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** How one segment moves and bends in a state, at any place along it. */
final class SegmentShape {

  /** Between places where loads begin, end or stand, a curve is drawn through this many places. */
  private static final int PIECES = 10;

  private final Segment segment;
  private final SegmentModel model;
  private final double[] movements;
  private final BeamColumnResponse response;

  /**
   * The shape of a segment.
   *
   * @param movements of its nodes, twelve, kept
   * @param response what happens between them
   */
  SegmentShape(Segment segment, double[] movements, BeamColumnResponse response) {
    this.segment = segment;
    this.model = response.model();
    this.movements = movements;
    this.response = response;
  }

  /** The shape of an unloaded segment whose nodes move. */
  static SegmentShape of(Segment segment, double[] movements) {
    SegmentModel model = new SegmentModel(segment);
    double[] deformations = new double[SegmentModel.DEFORMATIONS];
    model.deformations(movements, deformations);
    double[] ends = new double[SegmentModel.ENDS];
    model.endForces(deformations, ends);
    BeamColumnModel bar = new BeamColumnModel(model);
    bar.setForce(0);
    return new SegmentShape(
        segment,
        movements,
        new BeamColumnResponse(bar, 0, ends, List.of(), new double[SegmentModel.LOAD_MOMENTS]));
  }

  Segment segment() {
    return segment;
  }

  /** Places along the segment from end to end, at each of which loads begin or end among them. */
  double[] places() {
    List<Double> places = new ArrayList<>();
    double[] breaks = response.breaks();
    for (int i = 0; i + 1 < breaks.length; i++) {
      for (int k = 0; k < PIECES; k++) {
        places.add(breaks[i] + (breaks[i + 1] - breaks[i]) * k / PIECES);
      }
    }
    places.add(model.length());
    return places.stream().flatMapToDouble(DoubleStream::of).toArray();
  }

  /** Where a place lies at rest, global, mm. */
  Vector rest(double x) {
    return segment.from().plus(segment.to().minus(segment.from()).times(x / model.length()));
  }

  /** How far a place moves, global, mm. */
  Vector movement(double x) {
    double t = x / model.length();
    Vector chord =
        end(0, segment.start().offset()).times(1 - t).plus(end(6, segment.end().offset()).times(t));
    if (x <= 0 || x >= model.length()) {
      return chord;
    }
    return chord
        .plus(model.axisY().times(response.deflectionY(x)))
        .plus(model.axisZ().times(response.deflectionZ(x)));
  }

  /** The movement of a member end: that of its node, with the arm turned along. */
  private Vector end(int at, Vector arm) {
    Vector shift = new Vector(movements[at], movements[at + 1], movements[at + 2]);
    Vector turn = new Vector(movements[at + 3], movements[at + 4], movements[at + 5]);
    return shift.plus(turn.cross(arm));
  }

  /** Internal forces at a cut. */
  InternalForces forces(double x) {
    return response.at(x, x > 0 ? Side.BEFORE : Side.AFTER);
  }

  /** The side of the segment that a moment about its y axis stretches, times the moment. */
  Vector stretchedByY(InternalForces forces) {
    return model.axisZ().times(forces.momentY());
  }

  /** The side of the segment that a moment about its z axis stretches, times the moment. */
  Vector stretchedByZ(InternalForces forces) {
    return model.axisY().times(-forces.momentZ());
  }
}
