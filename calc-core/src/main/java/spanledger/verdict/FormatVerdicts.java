package spanledger.verdict;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.action.CombinationSet;
import spanledger.action.RuleSet;
import spanledger.behaviour.Behaviour;
import spanledger.jointdesign.JointDesign;
import spanledger.memberdesign.MemberDesign;
import spanledger.resistance.joint.JointCode;

/**
 * Whether factors on loads and on resistances are of one format. Safety lies in both together:
 * mixed, neither side's margin is what its standard wants.
 */
final class FormatVerdicts {

  /** The format whose loads are those of use, so that buckling must lie well above them. */
  private static final String ALLOWABLE_STRENGTH = "allowable strength by ASCE 7";

  private static final String SUBJECT = "whole structure";

  private final CombinationSet combinations;

  FormatVerdicts(CombinationSet combinations) {
    this.combinations = combinations;
  }

  List<Verdict> of(
      RuleSet rules,
      Optional<MemberDesign> members,
      Optional<JointDesign> joints,
      Behaviour behaviour) {
    List<Verdict> verdicts = new ArrayList<>();
    Set<String> others = new LinkedHashSet<>();
    compare("rule set " + rules.id(), rules.format(), others);
    members
        .map(design -> design.code().figures())
        .ifPresent(code -> compare("member code " + code.id(), code.format(), others));
    joints
        .flatMap(JointDesign::code)
        .map(JointCode::figures)
        .ifPresent(code -> compare("joint code " + code.id(), code.format(), others));
    if (!others.isEmpty()) {
      verdicts.add(
          open(
              "safety of loads and resistances together",
              "combinations "
                  + combinations.id()
                  + " are of "
                  + combinations.format().orElse("")
                  + ", but "
                  + String.join(", ", others)
                  + ": name combinations, rule set and codes of one format"));
    }
    boolean allowable = combinations.format().filter(ALLOWABLE_STRENGTH::equals).isPresent();
    if (allowable
        && behaviour
            .nearestToBuckling()
            .filter(nearest -> nearest.criticalFactor() < behaviour.limit())
            .isPresent()) {
      verdicts.add(
          open(
              "stability at allowable strength",
              "movement enlarges forces here, and loads of allowable strength lie 1.6 times below"
                  + " those at which the Aluminum Design Manual judges stability (C.2, from memory,"
                  + " confirm against the standard): judge it with asce-7-lrfd and adm-2020-lrfd,"
                  + " too"));
    }
    return verdicts;
  }

  private void compare(String what, Optional<String> format, Set<String> others) {
    format
        .filter(own -> combinations.format().filter(wanted -> !wanted.equals(own)).isPresent())
        .ifPresent(own -> others.add(what + " of " + own));
  }

  private static Verdict open(String check, String why) {
    return Verdict.notChecked(CheckGroup.OUTSIDE, check, SUBJECT, why);
  }
}
