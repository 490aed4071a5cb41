package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.robustness.BraceLoss;
import spanledger.robustness.FrameState;
import spanledger.robustness.RobustnessAnalysis;
import spanledger.robustness.RobustnessResult;

/** Judges the frame with its braces left out one by one. */
final class RobustnessVerdicts {

  /** How the check of the critical load factor is called. */
  static final String STANDS = "stands without";

  /** How the check of stresses is called. */
  static final String STRESS = "stress without";

  private static final double FAR = RobustnessAnalysis.FARTHEST;

  private RobustnessVerdicts() {}

  static List<Verdict> of(RobustnessResult result) {
    List<Verdict> verdicts = new ArrayList<>();
    for (BraceLoss loss : result.losses()) {
      verdicts.add(stands(result, loss));
      if (!Double.isNaN(loss.without().use())) {
        verdicts.add(stress(result, loss));
      }
    }
    return verdicts;
  }

  private static Verdict stands(RobustnessResult result, BraceLoss loss) {
    FrameState without = loss.without();
    String remark =
        without
            .failure()
            .map(why -> "it falls: " + why)
            .orElseGet(
                () ->
                    without.criticalFactor() < FAR
                        ? String.format(
                            Locale.ROOT,
                            "critical load factor %.2f, %s; with all members %s",
                            without.criticalFactor(),
                            without.mode(),
                            factor(result.whole()))
                        : "nothing buckles below 100 times the loads");
    return new Verdict(
        CheckGroup.WHOLE_STRUCTURE,
        STANDS,
        loss.member().name(),
        without.failure().isEmpty() && without.criticalFactor() > result.limit()
            ? Status.PASSED
            : Status.FAILED,
        result.limit(),
        without.criticalFactor(),
        "",
        Optional.empty(),
        remark + alike(loss));
  }

  private static String factor(FrameState whole) {
    return whole.criticalFactor() < FAR
        ? String.format(Locale.ROOT, "%.2f", whole.criticalFactor())
        : "more than 100";
  }

  private static Verdict stress(RobustnessResult result, BraceLoss loss) {
    FrameState without = loss.without();
    return new Verdict(
        CheckGroup.WHOLE_STRUCTURE,
        STRESS,
        loss.member().name(),
        without.use() <= 1 ? Status.PASSED : Status.FAILED,
        without.use(),
        1,
        "",
        Optional.empty(),
        String.format(
                Locale.ROOT,
                "in %s, %.0f %% with all members; level movement %.1f mm, %.1f mm with all members",
                without.used(),
                100 * result.whole().use(),
                without.movement(),
                result.whole().movement())
            + alike(loss));
  }

  private static String alike(BraceLoss loss) {
    return loss.alike().size() == 1
        ? ""
        : "; worst of " + loss.alike().size() + " alike: " + String.join(", ", loss.alike());
  }
}
