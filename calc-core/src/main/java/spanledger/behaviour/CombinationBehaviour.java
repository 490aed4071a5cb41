package spanledger.behaviour;

import java.util.List;
import java.util.Optional;
import spanledger.envelope.Instance;
import spanledger.stability.CriticalFactor;
import spanledger.state.HoldReport;
import spanledger.state.StateOutcome;
import spanledger.state.StateResult;

/**
 * How the frame behaves under one combination whose moving load stands at one place.
 *
 * @param instance the combination, with the place of its moving load
 * @param firstOrder equilibrium of the frame at rest
 * @param critical the factor on the axial forces of the first order at which the frame buckles;
 *     empty if there is no first-order solution
 * @param secondOrder equilibrium of the moved frame; empty if it is not asked for
 * @param byState whether checks rest on the state itself and not on a sum over load cases
 */
public record CombinationBehaviour(
    Instance instance,
    StateOutcome firstOrder,
    Optional<CriticalFactor> critical,
    Optional<StateOutcome> secondOrder,
    boolean byState) {

  /** The state that counts: of second order if that was asked for. */
  public StateOutcome outcome() {
    return secondOrder.orElse(firstOrder);
  }

  /** The solution that counts, if there is one. */
  public Optional<StateResult> result() {
    return outcome() instanceof StateOutcome.Solved solved
        ? Optional.of(solved.result())
        : Optional.empty();
  }

  /** The first-order solution, if there is one. */
  public Optional<StateResult> firstOrderResult() {
    return firstOrder instanceof StateOutcome.Solved solved
        ? Optional.of(solved.result())
        : Optional.empty();
  }

  /** Why there is no solution that counts; empty if there is one. */
  public Optional<String> failure() {
    if (outcome() instanceof StateOutcome.Unstable unstable) {
      return Optional.of(unstable.words());
    }
    return outcome() instanceof StateOutcome.NotConverged open
        ? Optional.of(open.words())
        : Optional.empty();
  }

  /** What holds with play, or that act one way, do in the state that counts, or did last. */
  public List<HoldReport> holds() {
    if (outcome() instanceof StateOutcome.Solved solved) {
      return solved.result().holds();
    }
    return outcome() instanceof StateOutcome.Unstable unstable
        ? unstable.holds()
        : ((StateOutcome.NotConverged) outcome()).holds();
  }

  /** The critical load factor; 0 where the frame cannot bear the combination at all. */
  public double criticalFactor() {
    return critical.map(CriticalFactor::factor).orElse(0.0);
  }
}
