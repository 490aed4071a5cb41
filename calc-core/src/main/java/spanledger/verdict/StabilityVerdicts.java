package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.action.LimitState;
import spanledger.behaviour.Behaviour;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.stability.CriticalFactor;

/**
 * Judges whether the frame stands: critical load factors, and combinations that it cannot bear. A
 * combination without a solution fails with words, never with a number.
 */
final class StabilityVerdicts {

  private static final String CRITICAL = "critical load factor";

  private final Behaviour behaviour;

  StabilityVerdicts(Behaviour behaviour) {
    this.behaviour = behaviour;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    for (CombinationBehaviour one : behaviour.combinations()) {
      one.failure().ifPresent(words -> verdicts.add(failed(one, words)));
    }
    for (LimitState limitState : LimitState.values()) {
      nearest(limitState).ifPresent(c -> verdicts.add(critical(limitState, c)));
    }
    int unsolved = behaviour.withoutState().size();
    if (unsolved > 0) {
      verdicts.add(
          Verdict.notChecked(
              CheckGroup.STABILITY,
              "members in states",
              "whole structure",
              String.format(
                  Locale.ROOT,
                  "%d combination%s no solution as a state; members, deflections and reactions"
                      + " under %s still rest on sums over load cases",
                  unsolved,
                  unsolved == 1 ? " has" : "s have",
                  unsolved == 1 ? "it" : "them")));
    }
    if (behaviour.lacksSecondOrder()) {
      verdicts.add(
          Verdict.notChecked(
              CheckGroup.STABILITY,
              "second-order effects",
              "whole structure",
              String.format(
                  Locale.ROOT,
                  "a critical load factor is below %s, and the job switches second order off",
                  text(behaviour.limit()))));
    }
    return verdicts;
  }

  private static Verdict failed(CombinationBehaviour one, String words) {
    return new Verdict(
        CheckGroup.STABILITY,
        "stability",
        one.instance().words(),
        Status.FAILED,
        Double.NaN,
        Double.NaN,
        "",
        Optional.empty(),
        Optional.of(one.instance()),
        words);
  }

  /** The combination of a limit state that is nearest to buckling, of those that have a factor. */
  private Optional<CombinationBehaviour> nearest(LimitState limitState) {
    CombinationBehaviour nearest = null;
    for (CombinationBehaviour one : behaviour.combinations()) {
      if (one.instance().combination().template().limitState() == limitState
          && one.critical().isPresent()
          && (nearest == null || one.criticalFactor() < nearest.criticalFactor())) {
        nearest = one;
      }
    }
    return Optional.ofNullable(nearest);
  }

  private Verdict critical(LimitState limitState, CombinationBehaviour one) {
    CriticalFactor critical = one.critical().orElseThrow();
    boolean buckles = critical.buckles();
    double factor = buckles ? critical.factor() : critical.searchedTo();
    return new Verdict(
        CheckGroup.STABILITY,
        CRITICAL + ", " + limitState.words(),
        "whole structure",
        factor > 1 ? Status.PASSED : Status.FAILED,
        1,
        factor,
        "",
        Optional.empty(),
        Optional.of(one.instance()),
        (buckles ? critical.mode().words() : "nothing buckles below the factor shown")
            + "; "
            + order(one));
  }

  private String order(CombinationBehaviour one) {
    if (one.secondOrder().isPresent()) {
      return "solved in second order";
    }
    return one.criticalFactor() >= behaviour.limit()
        ? "first order suffices from " + text(behaviour.limit())
        : "first order only";
  }

  private static String text(double value) {
    return Double.isInfinite(value) ? "any factor" : String.format(Locale.ROOT, "%.4g", value);
  }
}
