package spanledger.behaviour;

import java.util.List;
import org.jspecify.annotations.Nullable;
import spanledger.analysis.BeamColumnResponse;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.GoldenSection;
import spanledger.envelope.Governing;
import spanledger.envelope.PointMovement;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.state.StateResult;

/** The worst deflection of one member along one direction under solved states. */
final class StateDeflection {

  /** A deflected segment of the member in one state. */
  private final class Deflected {
    private final Segment segment;
    private final double[] movements;
    private final BeamColumnResponse response;
    private final PointMovement point;
    private final double before;

    Deflected(StateResult state, Segment segment, double before) {
      this.segment = segment;
      this.before = before;
      movements = state.movements(segment);
      response = state.response(segment);
      point = new PointMovement(response.model(), linear.direction());
    }

    double length() {
      return response.model().length();
    }

    double moved(double x) {
      boolean within = point.isWithin(x);
      return point.at(
          x, movements, within ? response.deflectionY(x) : 0, within ? response.deflectionZ(x) : 0);
    }
  }

  /** What comes less near to the worst at eighths does not exceed it between them. */
  private static final double NEAR = 0.97;

  private final DeflectionFinding linear;
  private final List<Segment> segments;
  private double worst;
  private @Nullable Governing governing;

  /**
   * @param linear the finding by sums over load cases
   * @param linearStays whether that is a result itself
   */
  StateDeflection(Frame frame, DeflectionFinding linear, boolean linearStays) {
    this.linear = linear;
    segments = frame.segmentsOf(linear.member());
    worst = linearStays ? linear.governing().value() : -1;
  }

  void look(CombinationBehaviour combination) {
    StateResult state = combination.result().orElseThrow();
    Deflected[] parts = new Deflected[segments.size()];
    double length = 0;
    for (int i = 0; i < parts.length; i++) {
      parts[i] = new Deflected(state, segments.get(i), length);
      length += parts[i].length();
    }
    Deflected last = parts[parts.length - 1];
    double first = parts[0].moved(0);
    double rise = (last.moved(last.length()) - first) / length;
    boolean fromChord = linear.kind() == DeflectionFinding.Kind.FROM_CHORD;
    for (Deflected part : parts) {
      for (double x : part.response.stations()) {
        double value = value(part, x, fromChord, first, rise);
        if (value > NEAR * worst) {
          take(combination, part, x, value);
          double[] around = part.response.around(x);
          double peak =
              GoldenSection.peak(
                  around[0], around[1], at -> value(part, at, fromChord, first, rise));
          take(combination, part, peak, value(part, peak, fromChord, first, rise));
        }
      }
    }
  }

  private void take(CombinationBehaviour combination, Deflected part, double x, double value) {
    if (value > worst) {
      worst = value;
      governing = new Governing(combination.instance(), new Station(part.segment, x), value);
    }
  }

  private static double value(
      Deflected part, double x, boolean fromChord, double first, double rise) {
    double moved = part.moved(x);
    return Math.abs(fromChord ? moved - first - rise * (part.before + x) : moved);
  }

  DeflectionFinding found() {
    Governing found = governing;
    return found == null
        ? linear
        : new DeflectionFinding(linear.member(), linear.kind(), linear.direction(), found);
  }
}
