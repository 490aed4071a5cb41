package spanledger.verdict;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spanledger.jointdesign.AnchorDemand;
import spanledger.jointdesign.JointEnd;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;

/** Says what a code found of the joints. */
final class JointVerdicts {

  /** How many member ends without a described joint are named. */
  private static final int NAMED = 12;

  private JointVerdicts() {}

  static List<Verdict> of(JointJudgement judgement) {
    List<Verdict> verdicts = new ArrayList<>();
    for (JointFinding finding : judgement.findings()) {
      verdicts.add(verdict(finding));
    }
    for (JointJudgement.OpenCheck open : judgement.open()) {
      verdicts.add(Verdict.notChecked(CheckGroup.JOINTS, "joint", open.subject(), open.what()));
    }
    Set<String> told = new HashSet<>();
    for (AnchorDemand demand : judgement.anchors()) {
      // The first of a foot is its greatest.
      if (told.add(demand.foot() + "|" + demand.ofTension())) {
        verdicts.add(anchor(demand, demand.ofTension()));
      }
    }
    return verdicts;
  }

  private static Verdict anchor(AnchorDemand demand, boolean tension) {
    return new Verdict(
        CheckGroup.SUPPORT,
        tension ? "greatest tension of an anchor" : "greatest shear of an anchor",
        demand.foot(),
        Status.DEMAND,
        tension ? demand.tension() : demand.shear(),
        Double.NaN,
        "N",
        Optional.empty(),
        Optional.of(demand.instance()),
        String.format(
            Locale.ROOT,
            "%s, with %s %.0f N; the anchor is not designed here, its own approval governs",
            demand.anchor(),
            tension ? "shear" : "tension",
            tension ? demand.shear() : demand.tension()));
  }

  /** The verdict on member ends of which the job says nothing; empty if there are none. */
  static Optional<Verdict> undescribed(JointJudgement judgement) {
    List<JointEnd> ends = judgement.undescribed();
    if (ends.isEmpty()) {
      return Optional.empty();
    }
    List<String> named = ends.stream().limit(NAMED).map(JointEnd::name).toList();
    String more = ends.size() > NAMED ? " and " + (ends.size() - NAMED) + " more" : "";
    return Optional.of(
        Verdict.notChecked(
            CheckGroup.OUTSIDE,
            "joints",
            "whole structure",
            (ends.size() == 1
                    ? "1 member end has no described joint: "
                    : ends.size() + " member ends have no described joint: ")
                + String.join("; ", named)
                + more
                + "; describe them under jointDetails and jointChecks"));
  }

  private static String remark(JointFinding finding, boolean known) {
    if (!known) {
      return "the check has no value here";
    }
    return "at " + finding.part() + (finding.hangsOnLoads() ? "" : ", whatever the loads");
  }

  private static Verdict verdict(JointFinding finding) {
    double value = finding.governing().value();
    boolean known = !Double.isNaN(value);
    String face = finding.faceName();
    String clause = finding.use().clause();
    return new Verdict(
        CheckGroup.JOINTS,
        face + ": " + finding.use().words() + (clause.isEmpty() ? "" : ", " + clause),
        finding.end().name(),
        known ? (value <= 1 ? Status.PASSED : Status.FAILED) : Status.NOT_CHECKED,
        value,
        1,
        "",
        Optional.of(finding.governing()),
        finding.hangsOnLoads() ? Optional.of(finding.instance()) : Optional.empty(),
        remark(finding, known));
  }
}
