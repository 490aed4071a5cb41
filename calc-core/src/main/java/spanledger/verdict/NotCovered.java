package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.ClampFoot;
import spanledger.jointdesign.JointJudgement;

/** What no part of the calculation covers yet; said with every result. */
final class NotCovered {

  private static final String SUBJECT = "whole structure";

  private NotCovered() {}

  /**
   * @param geometryReviewed whether the sizes of the structure were judged
   * @param byCode whether a member code judged the members
   * @param joints what a code says of the joints, if the job describes some
   * @param withoutPanel the decks, floors and flights of which no panel is named
   * @param standing whether the job says how the structure stands
   */
  static List<Verdict> verdicts(
      Findings findings,
      boolean geometryReviewed,
      boolean byCode,
      Optional<JointJudgement> joints,
      List<String> withoutPanel,
      boolean standing) {
    List<Verdict> verdicts = new ArrayList<>();
    if (joints.isEmpty()) {
      verdicts.add(
          open(
              "joints",
              "brackets, keys, slot bolts and welds are not checked; end forces are in the"
                  + " workbook"));
    }
    joints.flatMap(JointVerdicts::undescribed).ifPresent(verdicts::add);
    verdicts.add(open("anchors and ground", ground(joints)));
    if (!withoutPanel.isEmpty()) {
      verdicts.add(
          open(
              "deck panels and treads",
              "taken to span between their members; not checked themselves, since no panel is named"
                  + " for "
                  + String.join(", ", withoutPanel)
                  + "; describe it under \"panels\", then name it as \"panel\" of the deck or floor"
                  + " or as \"treadPanel\" of the stair"));
    }
    if (findings.deflections().stream().noneMatch(f -> f.kind() == DeflectionFinding.Kind.SWAY)) {
      verdicts.add(
          open("sway deflection", "no floor and no leg stands above the supports to be judged"));
    }
    if (!standing) {
      verdicts.add(
          open(
              "overturning and sliding",
              "not checked; reactions are handed on. Say under standing whether the feet are"
                  + " anchored, their friction, ballast and wind"));
    }
    if (!geometryReviewed) {
      verdicts.add(
          open(
              "geometry rules",
              "heights, gaps, rises and goings are not checked; describe the job as an assembly"));
    }
    if (!byCode) {
      verdicts.add(
          0,
          open(
              "member buckling",
              "flexural, torsional and lateral-torsional buckling are not checked; name a member"
                  + " code under memberChecks"));
    }
    return verdicts;
  }

  private static String ground(Optional<JointJudgement> joints) {
    boolean feet =
        joints
            .map(
                found ->
                    found.findings().stream()
                        .anyMatch(
                            f ->
                                f.run().joint() instanceof BasePlateFoot
                                    || f.run().joint() instanceof ClampFoot))
            .orElse(false);
    return feet
        ? "pressure and slip of the described feet are checked; anchors are not designed here, their"
            + " forces are handed on, and so is what lies under the surface"
        : "not checked; reactions are handed on";
  }

  private static Verdict open(String check, String why) {
    return Verdict.notChecked(CheckGroup.OUTSIDE, check, SUBJECT, why);
  }
}
