package spanledger.envelope;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Combination;
import spanledger.action.LeadingAction;
import spanledger.analysis.InternalForces;
import spanledger.frame.Member;

/** What is looked for on one member, and the worst found so far. */
final class StrengthTarget {

  private final Member member;
  private final StrengthFinding.Scope scope;
  private final Set<StrengthMeasure> measures;
  private final Optional<Station> only;
  private final Map<StrengthMeasure, StrengthFinding> worst = new EnumMap<>(StrengthMeasure.class);

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
    StrengthFinding finding = worst.get(measure);
    return finding == null ? -1 : finding.governing().value();
  }

  /** Takes a finding of this target if it is worse than what was found before. */
  void offer(StrengthFinding finding) {
    if (finding.governing().value() > worst(finding.measure())) {
      worst.put(finding.measure(), finding);
    }
  }

  /** A finding of this target. */
  StrengthFinding finding(StrengthMeasure measure, Governing governing, double[] forces) {
    return new StrengthFinding(
        member,
        measure,
        scope,
        governing,
        new InternalForces(forces[0], forces[1], forces[2], forces[3], forces[4], forces[5]));
  }

  /** The worst of each measure. */
  Collection<StrengthFinding> found() {
    return worst.values();
  }
}
