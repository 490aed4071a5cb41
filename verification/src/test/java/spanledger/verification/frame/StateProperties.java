package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import spanledger.action.LoadCase;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.stability.CriticalFactor;
import spanledger.state.LoadState;
import spanledger.state.StateAnalysis;
import spanledger.state.StateOptions;
import spanledger.state.StateOutcome;
import spanledger.state.StateResult;

/** What must hold for states of any frame. Random frames amplify rounding up to a million times. */
class StateProperties {

  @Provide
  Arbitrary<RandomFrame> frames() {
    return Arbitraries.randomValue(RandomFrame::make);
  }

  @Property(tries = 100)
  void aFirstOrderStateIsWhatTheLinearAnalysisGives(@ForAll("frames") RandomFrame random) {
    Frame frame = random.frame();
    LoadCase loads = random.both("all", frame);

    CaseResult linear = new FrameAnalysis(frame).solve(List.of(loads)).results().get(0);
    StateResult state =
        solved(new StateAnalysis(frame, StateOptions.FIRST_ORDER).solve(LoadState.of(loads)));

    double greatest = 0;
    double apart = 0;
    for (Segment segment : frame.segments()) {
      double[] expected = linear.endForces(segment);
      double[] found = state.endForces(segment);
      for (int i = 0; i < SegmentModel.ENDS; i++) {
        greatest = Math.max(greatest, Math.abs(expected[i]));
        apart = Math.max(apart, Math.abs(expected[i] - found[i]));
      }
    }
    assertThat(apart).isLessThan(1e-8 * greatest);
  }

  @Property(tries = 60)
  void theCriticalFactorIsProvedAndAStateWellBelowItIsSolved(@ForAll("frames") RandomFrame random) {
    Frame frame = random.frame();
    LoadCase loads = random.both("all", frame);
    StateAnalysis analysis = new StateAnalysis(frame, StateOptions.SECOND_ORDER);

    StateResult first = solved(analysis.solveFirstOrder(LoadState.of(loads)));
    CriticalFactor critical = analysis.critical(first, 1e9);

    if (!critical.buckles()) {
      // A small frame may happen to be in tension all over.
      return;
    }
    assertThat(critical.stableAt()).isBetween(0.9999 * critical.factor(), critical.factor());
    // Random frames move far, and second order redistributes their forces: hence well below.
    StateResult below = solved(analysis.solve(times(loads, 0.02 * critical.factor())));
    assertThat(below.effort().residual()).isLessThan(1e-9);
  }

  private static LoadState times(LoadCase loads, double factor) {
    return new LoadState("scaled", List.of(new LoadState.Part(loads, factor)));
  }

  private static StateResult solved(StateOutcome outcome) {
    assertThat(outcome).isInstanceOf(StateOutcome.Solved.class);
    return ((StateOutcome.Solved) outcome).result();
  }
}
