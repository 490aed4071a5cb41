package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/**
 * How much each member uses of what it may bear: the worst of all its verdicts.
 *
 * @param worst the verdict with the greatest utilisation of each member that has one, failures
 *     first
 * @param unchecked how many verdicts of each member say that something was not checked
 */
record MemberUses(Map<String, Verdict> worst, Map<String, Integer> unchecked) {

  static MemberUses of(Frame frame, List<Verdict> verdicts) {
    Map<String, Verdict> worst = new LinkedHashMap<>();
    Map<String, Integer> unchecked = new LinkedHashMap<>();
    for (Member member : frame.members()) {
      unchecked.put(member.name(), 0);
    }
    for (Verdict verdict : verdicts) {
      if (!unchecked.containsKey(verdict.subject())) {
        continue;
      }
      if (verdict.status() == Status.NOT_CHECKED) {
        unchecked.merge(verdict.subject(), 1, Integer::sum);
      }
      // Sway is the whole structure's: it would make all floor members look alike. The slenderness
      // of walls tells how to judge strength, not how much of it is used.
      boolean own =
          (verdict.group() != CheckGroup.STABILITY || verdict.status() == Status.FAILED)
              && !verdict.check().equals(StrengthMeasure.WALL.words());
      if (own && Double.isFinite(verdict.utilisation()) && verdict.status() != Status.DEMAND) {
        worst.merge(verdict.subject(), verdict, MemberUses::worse);
      }
    }
    return new MemberUses(worst, unchecked);
  }

  private static Verdict worse(Verdict one, Verdict other) {
    return isWorse(other, one) ? other : one;
  }

  /** Whether one verdict is worse than another: it fails and the other does not, or uses more. */
  static boolean isWorse(Verdict candidate, Verdict than) {
    boolean fails = candidate.status() == Status.FAILED;
    return fails == (than.status() == Status.FAILED)
        ? candidate.utilisation() > than.utilisation()
        : fails;
  }

  /** The worst verdicts, the worst member first. */
  List<Verdict> ranked() {
    List<Verdict> ranked = new ArrayList<>(worst.values());
    ranked.sort(
        Comparator.comparing((Verdict v) -> v.status() != Status.FAILED)
            .thenComparing(Comparator.comparingDouble(Verdict::utilisation).reversed()));
    return ranked;
  }
}
