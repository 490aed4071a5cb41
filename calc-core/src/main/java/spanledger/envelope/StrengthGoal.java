package spanledger.envelope;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spanledger.action.Combination;
import spanledger.analysis.InternalForces;
import spanledger.frame.Member;

/** One measure looked for on one member, and the worst found so far. */
final class StrengthGoal {

  private final Member member;
  private final StrengthFinding.Scope scope;
  private final StrengthMeasure measure;
  private double worst = -1;
  private double toBeat = -1;
  private @Nullable Instance instance;
  private @Nullable Station station;

  StrengthGoal(Member member, StrengthFinding.Scope scope, StrengthMeasure measure) {
    this.member = member;
    this.scope = scope;
    this.measure = measure;
  }

  StrengthMeasure measure() {
    return measure;
  }

  boolean covers(Combination combination) {
    return scope.covers(combination);
  }

  /** The worst so far, less than 0 if there is none. */
  double worst() {
    return worst;
  }

  /** A ranking stress that is needed for the measure to be worse than the worst so far, MPa. */
  double toBeat() {
    return toBeat;
  }

  /**
   * Takes a state that is worse than all before.
   *
   * @param stress a ranking stress without which the measure cannot be worse than that, MPa
   */
  void take(double value, double stress, Instance where, Station cut) {
    worst = value;
    toBeat = stress;
    instance = where;
    station = cut;
  }

  /** Where the worst was found; empty if no combination was looked at. */
  Optional<Governing> found() {
    return instance == null || station == null
        ? Optional.empty()
        : Optional.of(new Governing(instance, station, worst));
  }

  StrengthFinding finding(Governing governing, InternalForces forces) {
    return new StrengthFinding(member, measure, scope, governing, forces);
  }

  /** The least of the worst so far of the goals for a measure that cover a combination. */
  static double leastWorst(StrengthGoal[] goals, StrengthMeasure measure, Combination combination) {
    double least = Double.POSITIVE_INFINITY;
    for (StrengthGoal goal : goals) {
      if (goal.measure == measure && goal.covers(combination)) {
        least = Math.min(least, goal.worst);
      }
    }
    return least;
  }
}
