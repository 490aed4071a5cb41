package spanledger.envelope;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Combination;
import spanledger.action.LeadingAction;
import spanledger.frame.Member;

/** What is looked for on one member, and the worst found so far. */
final class StrengthTarget {

  private final Member member;
  private final StrengthFinding.Scope scope;
  private final Set<StrengthMeasure> measures;
  private final Optional<Station> only;
  private final Map<StrengthMeasure, Governing> worst = new EnumMap<>(StrengthMeasure.class);

  /**
   * @param only the one cut to look at, if not all
   */
  StrengthTarget(
      Member member,
      StrengthFinding.Scope scope,
      Set<StrengthMeasure> measures,
      Optional<Station> only) {
    this.member = member;
    this.scope = scope;
    this.measures = measures;
    this.only = only;
  }

  Member member() {
    return member;
  }

  StrengthFinding.Scope scope() {
    return scope;
  }

  Set<StrengthMeasure> measures() {
    return measures;
  }

  Optional<Station> only() {
    return only;
  }

  boolean covers(Combination combination) {
    return scope == StrengthFinding.Scope.ALL
        || combination.template().leading() == LeadingAction.GUARDRAIL;
  }

  double worst(StrengthMeasure measure) {
    Governing governing = worst.get(measure);
    return governing == null ? -1 : governing.value();
  }

  void offer(StrengthMeasure measure, double value, Instance instance, Station station) {
    if (value > worst(measure)) {
      worst.put(measure, new Governing(instance, station, value));
    }
  }

  Map<StrengthMeasure, Governing> found() {
    return worst;
  }
}
