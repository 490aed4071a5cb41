package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;
import spanledger.frame.Support;

/**
 * Finds the greatest and least reaction of every support along X, Y and Z, under strength and under
 * stability combinations. Reactions are linear effects, so the extremes are exact.
 */
final class ReactionSearch {

  private static final List<Freedom> SHIFTS =
      List.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z);

  private final Responses responses;

  ReactionSearch(Responses responses) {
    this.responses = responses;
  }

  List<ReactionFinding> run(List<Combination> combinations) {
    List<ReactionFinding> findings = new ArrayList<>();
    for (Support support : responses.frame().supports()) {
      for (Freedom freedom : SHIFTS) {
        if (!(support.restraint(freedom) instanceof Restraint.Free)) {
          LinearPeaks peaks =
              new LinearPeaks(
                  responses, new SupportReaction(responses.analysis(), support, freedom));
          for (LimitState state : List.of(LimitState.STRENGTH, LimitState.STABILITY)) {
            for (boolean greatest : new boolean[] {true, false}) {
              worst(peaks, combinations, state, greatest)
                  .ifPresent(
                      p ->
                          findings.add(
                              new ReactionFinding(
                                  support, freedom, greatest, state, p.instance(), p.value())));
            }
          }
        }
      }
    }
    return findings;
  }

  private static Optional<LinearPeaks.Peak> worst(
      LinearPeaks peaks, List<Combination> combinations, LimitState state, boolean greatest) {
    Optional<LinearPeaks.Peak> worst = Optional.empty();
    for (Combination combination : combinations) {
      if (combination.template().limitState() == state) {
        LinearPeaks.Peak peak = greatest ? peaks.greatest(combination) : peaks.least(combination);
        if (worst.isEmpty()
            || (greatest
                ? peak.value() > worst.get().value()
                : peak.value() < worst.get().value())) {
          worst = Optional.of(peak);
        }
      }
    }
    return worst;
  }
}
