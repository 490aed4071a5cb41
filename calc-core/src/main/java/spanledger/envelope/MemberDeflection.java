package spanledger.envelope;

import java.util.List;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.WeightedLoad;
import spanledger.frame.Frame;
import spanledger.frame.Segment;

/**
 * The deflection of a target at a cut, from the movements and end forces of the frame; one per
 * thread.
 */
final class MemberDeflection {

  private static final int ENDS = SegmentModel.ENDS;
  private static final List<WeightedLoad> NO_LOADS = List.of();

  private final Responses responses;
  private final Frame frame;
  private final CutMovement cut = new CutMovement();
  private final double[] ends = new double[ENDS];

  MemberDeflection(Responses responses) {
    this.responses = responses;
    this.frame = responses.frame();
  }

  /**
   * The deflection, mm, with its sign along the target's direction.
   *
   * @param movements six per node
   * @param endForces twelve per segment
   */
  double at(
      DeflectionTarget target,
      Segment segment,
      double x,
      double[] movements,
      double[] endForces,
      List<WeightedLoad> loads) {
    double here = movement(target, segment, x, movements, endForces, loads);
    if (target.kind() != DeflectionFinding.Kind.FROM_CHORD) {
      return here;
    }
    List<Segment> segments = frame.segmentsOf(target.member());
    Segment last = segments.get(segments.size() - 1);
    double first = movement(target, segments.get(0), 0, movements, endForces, NO_LOADS);
    double second =
        movement(
            target,
            last,
            responses.analysis().model(last).length(),
            movements,
            endForces,
            NO_LOADS);
    return here - (first + (second - first) * share(target, segment, x));
  }

  /** The place along the member per length. */
  private double share(DeflectionTarget target, Segment segment, double x) {
    double before = 0;
    double total = 0;
    for (Segment one : frame.segmentsOf(target.member())) {
      before += one.order() < segment.order() ? responses.analysis().model(one).length() : 0;
      total += responses.analysis().model(one).length();
    }
    return (before + x) / total;
  }

  private double movement(
      DeflectionTarget target,
      Segment segment,
      double x,
      double[] movements,
      double[] endForces,
      List<WeightedLoad> loads) {
    responses.gather(movements, segment, ends);
    return cut.along(
        responses.analysis().model(segment),
        ends,
        endForces,
        segment.index() * ENDS,
        loads,
        x,
        target.direction());
  }
}
