package spanledger.state;

import java.util.List;
import spanledger.stability.ModeShape;

/** What solving a state came to: a result, or the reason why there is none. */
public sealed interface StateOutcome {

  /** The state. */
  LoadState state();

  /** Solved: equilibrium holds and every hold does what it should. */
  record Solved(StateResult result) implements StateOutcome {
    @Override
    public LoadState state() {
      return result.state();
    }
  }

  /**
   * The frame cannot bear the state: it moves without limit.
   *
   * @param mode how it moves
   * @param holds what holds with play, or that act one way, did then
   * @param words for readers
   */
  record Unstable(LoadState state, ModeShape mode, List<HoldReport> holds, String words)
      implements StateOutcome {}

  /**
   * No end was found.
   *
   * @param holds what holds did last
   * @param residual force left over at a node last, per sum of all loads
   * @param words for readers
   */
  record NotConverged(LoadState state, List<HoldReport> holds, double residual, String words)
      implements StateOutcome {}
}
