package spanledger.behaviour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.analysis.BeamColumnResponse;
import spanledger.analysis.InternalForces;
import spanledger.analysis.Side;
import spanledger.envelope.GoldenSection;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.envelope.SectionCheck;
import spanledger.envelope.Station;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.resistance.ResistanceFactors;

/** The worst of every strength measure of one member under solved states. */
final class StateStrength {

  /**
   * Between eighths a parabola rises by a 64th of its whole height at most, so what comes less near
   * to the worst is not narrowed down.
   */
  private static final double NEAR = 0.97;

  /** A value that was met. */
  private record Met(
      double value, Instance instance, Station station, BeamColumnResponse response) {}

  /** What is looked for, and the worst found so far. */
  static final class Goal {
    private final StrengthFinding linear;
    private final boolean linearStays;
    private final List<Met> near = new ArrayList<>();
    private double worst;

    /**
     * @param linear the finding by sums over load cases
     * @param linearStays whether that is a result itself
     */
    Goal(StrengthFinding linear, boolean linearStays) {
      this.linear = linear;
      this.linearStays = linearStays;
      worst = linearStays ? linear.governing().value() : -1;
    }

    private boolean covers(CombinationBehaviour combination) {
      return linear.scope().covers(combination.instance().combination())
          && StateFindings.counts(combination, linearStays);
    }

    private Optional<Station> only() {
      return linear.scope() == StrengthFinding.Scope.POST_BASE
          ? Optional.of(linear.governing().station())
          : Optional.empty();
    }
  }

  private final List<Goal> goals;
  private final List<Segment> segments;
  private final SectionCheck check;
  private final double[] forces = new double[6];

  /**
   * @param goals at least one, all of one member
   */
  StateStrength(Frame frame, List<Goal> goals, ResistanceFactors factors) {
    this.goals = List.copyOf(goals);
    segments = frame.segmentsOf(goals.get(0).linear.member());
    check = new SectionCheck(goals.get(0).linear.member(), factors);
  }

  void look(CombinationBehaviour combination) {
    List<Goal> along = new ArrayList<>();
    for (Goal goal : goals) {
      if (goal.covers(combination)) {
        if (goal.only().isPresent()) {
          Station cut = goal.only().get();
          BeamColumnResponse response = combination.result().orElseThrow().response(cut.segment());
          look(List.of(goal), combination.instance(), response, cut);
        } else {
          along.add(goal);
        }
      }
    }
    for (Segment segment : along.isEmpty() ? List.<Segment>of() : segments) {
      BeamColumnResponse response = combination.result().orElseThrow().response(segment);
      for (double x : response.forceStations()) {
        look(along, combination.instance(), response, new Station(segment, x));
      }
    }
  }

  private void look(
      List<Goal> covering, Instance instance, BeamColumnResponse response, Station cut) {
    evaluate(response.at(cut.x(), Side.BEFORE));
    for (Goal goal : covering) {
      double value = check.value(goal.linear.measure());
      if (value > NEAR * goal.worst) {
        goal.near.add(new Met(value, instance, cut, response));
        goal.worst = Math.max(goal.worst, value);
      }
    }
  }

  private void evaluate(InternalForces at) {
    forces[0] = at.axial();
    forces[1] = at.shearY();
    forces[2] = at.shearZ();
    forces[3] = at.torque();
    forces[4] = at.momentY();
    forces[5] = at.momentZ();
    check.evaluate(forces);
  }

  private double value(BeamColumnResponse response, double x, StrengthMeasure measure) {
    evaluate(response.at(x, Side.BEFORE));
    return check.value(measure);
  }

  List<StrengthFinding> found() {
    return goals.stream().map(this::found).toList();
  }

  private StrengthFinding found(Goal goal) {
    StrengthMeasure measure = goal.linear.measure();
    StrengthFinding worst = goal.linear;
    double greatest = goal.linearStays ? goal.linear.governing().value() : -1;
    for (Met met : goal.near) {
      if (met.value() > NEAR * goal.worst) {
        double x = goal.only().isPresent() ? met.station().x() : peak(met, measure);
        double value = value(met.response(), x, measure);
        if (value > greatest) {
          greatest = value;
          Station cut = new Station(met.station().segment(), x);
          worst =
              new StrengthFinding(
                  goal.linear.member(),
                  measure,
                  goal.linear.scope(),
                  new Governing(met.instance(), cut, value),
                  met.response().at(x, Side.BEFORE));
        }
      }
    }
    return worst;
  }

  private double peak(Met met, StrengthMeasure measure) {
    double[] around = met.response().around(met.station().x());
    double peak = GoldenSection.peak(around[0], around[1], x -> value(met.response(), x, measure));
    return value(met.response(), peak, measure) > met.value() ? peak : met.station().x();
  }
}
