package spanledger.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.action.RuleSet;

/** Collects findings against the figures of one rule set. */
final class Findings {

  private final RuleSet rules;
  private final List<GeometryFinding> all = new ArrayList<>();

  Findings(RuleSet rules) {
    this.rules = rules;
  }

  List<GeometryFinding> all() {
    return List.copyOf(all);
  }

  Optional<Figure> figure(GeometryRule rule) {
    return rules.find(rule.id());
  }

  /** A size that is known. */
  void add(GeometryRule rule, String subject, double size, String remark) {
    add(rule, subject, Optional.of(size), Optional.empty(), remark);
  }

  /** A step of the flight's calculation. */
  void addStep(GeometryRule rule, String subject, double size, String step) {
    add(rule, subject, Optional.of(size), Optional.of(step), "");
  }

  /** A size that the job gives or leaves out; a limit that it would meet must exist. */
  void addGiven(GeometryRule rule, String subject, Optional<Double> size, String key) {
    add(
        rule,
        subject,
        size,
        Optional.empty(),
        size.isPresent() ? "" : "\"" + key + "\" is not given");
  }

  private void add(
      GeometryRule rule,
      String subject,
      Optional<Double> size,
      Optional<String> step,
      String remark) {
    Optional<Figure> limit = figure(rule);
    if (limit.isPresent()) {
      all.add(
          new GeometryFinding(rule.check(), subject, size, limit, rule.isAtMost(), step, remark));
    }
  }

  /** Says that a size has no limit in the rule set, where one would be looked for. */
  void requireLimit(GeometryRule rule, String subject) {
    if (figure(rule).isEmpty()) {
      all.add(
          new GeometryFinding(
              rule.check(),
              subject,
              Optional.empty(),
              Optional.empty(),
              rule.isAtMost(),
              Optional.empty(),
              "the rule set has no figure " + rule.id() + "; add it to \"overrides\""));
    }
  }

  /** A limit that is not of the rule set. */
  void add(String check, String subject, double size, Figure limit, boolean atMost) {
    all.add(
        new GeometryFinding(
            check, subject, Optional.of(size), Optional.of(limit), atMost, Optional.empty(), ""));
  }
}
