package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.memberdesign.MemberJudgement;
import spanledger.memberdesign.MemberReadiness;
import spanledger.memberdesign.MemberUse;

/** Says what a member code found. */
final class MemberVerdicts {

  private MemberVerdicts() {}

  static List<Verdict> of(MemberJudgement judgement) {
    List<Verdict> verdicts = new ArrayList<>();
    for (MemberUse use : judgement.uses()) {
      verdicts.add(verdict(use));
    }
    for (MemberReadiness.Lacking lacking : judgement.lacking()) {
      verdicts.add(
          Verdict.notChecked(
              CheckGroup.MEMBER_RESISTANCE,
              "member resistance",
              lacking.member().name(),
              lacking.words()));
    }
    return verdicts;
  }

  private static Verdict verdict(MemberUse use) {
    double value = use.governing().value();
    boolean known = !Double.isNaN(value);
    String clause = use.use().clause();
    return new Verdict(
        CheckGroup.MEMBER_RESISTANCE,
        clause.isEmpty() ? use.use().words() : use.use().words() + ", " + clause,
        use.member().member().name(),
        known ? (value <= 1 ? Status.PASSED : Status.FAILED) : Status.NOT_CHECKED,
        value,
        1,
        "",
        Optional.of(use.governing()),
        known ? "" : "the check has no value here");
  }
}
