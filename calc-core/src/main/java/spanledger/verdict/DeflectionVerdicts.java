package spanledger.verdict;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Figure;
import spanledger.action.Rail;
import spanledger.action.RuleSet;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.envelope.StandingHeight;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.DeflectionUtilisation;

/** Judges deflections against the limits of the rule set. */
final class DeflectionVerdicts {

  private static final CompiledProcedure CAPPED = DeflectionUtilisation.FLOOR.compile();
  private static final CompiledProcedure BY_RATIO = DeflectionUtilisation.FLOOR_BY_RATIO.compile();

  private static final CompiledProcedure SWAY = DeflectionUtilisation.SWAY.compile();

  private final RuleSet rules;
  private final StandingHeight heights;
  private final Set<String> posts = new HashSet<>();

  DeflectionVerdicts(RuleSet rules, List<Rail> rails, Frame frame) {
    this.rules = rules;
    this.heights = new StandingHeight(frame);
    for (Rail rail : rails) {
      rail.posts().forEach(post -> posts.add(post.name()));
    }
  }

  List<Verdict> of(Findings findings) {
    List<Verdict> verdicts = new ArrayList<>();
    for (DeflectionFinding finding : findings.deflections()) {
      verdicts.add(
          switch (finding.kind()) {
            case FROM_CHORD -> floor(finding);
            case MOVEMENT -> rail(finding);
            case SWAY -> sway(finding);
          });
    }
    return verdicts;
  }

  private Verdict floor(DeflectionFinding finding) {
    Member member = finding.member();
    String check = "deflection";
    Optional<Figure> ratio = rules.find(RuleSet.FLOOR_DEFLECTION_RATIO);
    if (ratio.isEmpty()) {
      return Verdict.notChecked(
          CheckGroup.MEMBER_DEFLECTION,
          check,
          member.name(),
          "the rule set has no " + RuleSet.FLOOR_DEFLECTION_RATIO);
    }
    return judged(
        CheckGroup.MEMBER_DEFLECTION, check, finding, limit(member.length(), ratio.get()));
  }

  private double limit(double length, Figure ratio) {
    Optional<Figure> most = rules.find(RuleSet.FLOOR_DEFLECTION);
    CompiledProcedure procedure = most.isPresent() ? CAPPED : BY_RATIO;
    double[] slots = procedure.newSlots();
    slots[procedure.slot("L_m")] = length;
    slots[procedure.slot("r_lim")] = ratio.value();
    if (most.isPresent()) {
      slots[procedure.slot("δ_max")] = most.get().value();
    }
    procedure.evaluate(slots);
    return slots[procedure.slot("δ_lim")];
  }

  private Verdict sway(DeflectionFinding finding) {
    Member member = finding.member();
    String check = "sway along " + (finding.direction().x() != 0 ? "X" : "Y");
    Optional<Figure> ratio = rules.find(RuleSet.SWAY_DEFLECTION_RATIO);
    if (ratio.isEmpty()) {
      return Verdict.notChecked(
          CheckGroup.STABILITY,
          check,
          member.name(),
          "the rule set has no " + RuleSet.SWAY_DEFLECTION_RATIO);
    }
    double[] slots = SWAY.newSlots();
    slots[SWAY.slot("h")] = heights.of(member);
    slots[SWAY.slot("r_sway")] = ratio.get().value();
    SWAY.evaluate(slots);
    return judged(CheckGroup.STABILITY, check, finding, slots[SWAY.slot("δ_lim")]);
  }

  private Verdict rail(DeflectionFinding finding) {
    String check = posts.contains(finding.member().name()) ? "post movement" : "rail movement";
    Optional<Figure> limit = rules.find(RuleSet.RAIL_DEFLECTION);
    if (limit.isEmpty()) {
      return Verdict.notChecked(
          CheckGroup.GUARDRAIL,
          check,
          finding.member().name(),
          "the rule set has no " + RuleSet.RAIL_DEFLECTION);
    }
    String way = Math.abs(finding.direction().z()) > 0.5 ? ", downward" : ", level";
    return judged(CheckGroup.GUARDRAIL, check + way, finding, limit.get().value());
  }

  private static Verdict judged(
      CheckGroup group, String check, DeflectionFinding finding, double limit) {
    double value = finding.governing().value();
    return new Verdict(
        group,
        check,
        finding.member().name(),
        value <= limit ? Status.PASSED : Status.FAILED,
        value,
        limit,
        "mm",
        Optional.of(finding.governing()),
        "");
  }
}
