package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.action.CombinationSet;
import spanledger.action.LimitState;
import spanledger.envelope.Findings;
import spanledger.envelope.ReactionFinding;
import spanledger.frame.Freedom;

/** Hands reactions on, and points out supports that would have to pull the structure down. */
final class SupportVerdicts {

  /** A pull smaller than this is rounding, N. */
  private static final double NO_PULL = 1e-3;

  List<Verdict> of(Findings findings, CombinationSet combinations) {
    boolean stability =
        combinations.templates().stream().anyMatch(t -> t.limitState() == LimitState.STABILITY);
    List<Verdict> verdicts = new ArrayList<>();
    for (ReactionFinding finding : findings.reactions()) {
      verdicts.add(demand(finding));
      boolean least = finding.freedom() == Freedom.SHIFT_Z && !finding.greatest();
      LimitState decisive = stability ? LimitState.STABILITY : LimitState.STRENGTH;
      if (least && finding.limitState() == decisive && finding.value() < -NO_PULL) {
        verdicts.add(
            new Verdict(
                CheckGroup.SUPPORT,
                "uplift",
                finding.support().node().name(),
                Status.NOT_CHECKED,
                -finding.value(),
                Double.NaN,
                "N",
                Optional.empty(),
                String.format(
                    Locale.ROOT,
                    "the support must hold the structure down with %.0f N; the anchor is not designed"
                        + " here",
                    -finding.value())));
      }
    }
    return verdicts;
  }

  private static Verdict demand(ReactionFinding finding) {
    return new Verdict(
        CheckGroup.SUPPORT,
        (finding.greatest() ? "greatest" : "least")
            + " reaction "
            + finding.freedom().words()
            + ", "
            + finding.limitState().words(),
        finding.support().node().name(),
        Status.DEMAND,
        finding.value(),
        Double.NaN,
        "N",
        Optional.empty(),
        finding.instance().words());
  }
}
