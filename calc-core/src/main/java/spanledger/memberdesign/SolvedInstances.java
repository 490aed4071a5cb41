package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.LoadCase;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.SegmentModel;
import spanledger.behaviour.Behaviour;
import spanledger.behaviour.BehaviourAnalysis;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.envelope.StrengthFinding;
import spanledger.frame.Segment;
import spanledger.state.LoadState;
import spanledger.state.StateResult;

/**
 * Combinations of a limit state, each with its moving load at one place: all without a moving load
 * under all imposed loads, and every pattern and place that governs some stress (for strength) or
 * some deflection (for serviceability) of some member. Those that were solved as states give the
 * forces of these, the others those of the first order.
 */
public final class SolvedInstances {

  private final FrameAnalysis analysis;
  private final CaseLoads loads;
  private final List<MemberForces> states = new ArrayList<>();

  /**
   * Takes what was solved.
   *
   * @param limitState strength or serviceability
   * @param findings of the linear search, which chooses patterns and places
   * @param behaviour the frame under all of these
   */
  public SolvedInstances(
      FrameAnalysis analysis,
      LimitState limitState,
      List<Combination> combinations,
      Findings findings,
      Behaviour behaviour) {
    this.analysis = analysis;
    loads = new CaseLoads(analysis);
    Map<String, Instance> instances = new LinkedHashMap<>();
    for (Combination combination : combinations) {
      boolean asked = combination.template().limitState() == limitState;
      if (asked && combination.moving().isEmpty()) {
        Instance instance = new Instance(combination, combination.options(), Optional.empty());
        instances.put(instance.words(), instance);
      }
    }
    Stream<Governing> governing =
        limitState == LimitState.SERVICEABILITY
            ? findings.deflections().stream().map(DeflectionFinding::governing)
            : findings.strength().stream().map(StrengthFinding::governing);
    governing
        .map(Governing::instance)
        .forEach(instance -> instances.putIfAbsent(instance.words(), instance));
    for (Instance instance : instances.values()) {
      states.add(forces(instance, behaviour));
    }
  }

  /** The states, fixed combinations first. */
  public Collection<MemberForces> states() {
    return List.copyOf(states);
  }

  private MemberForces forces(Instance instance, Behaviour behaviour) {
    Optional<StateResult> state = behaviour.stateOf(instance);
    if (state.isPresent()) {
      return new StateForces(analysis.frame(), instance, state.get());
    }
    Optional<StateResult> firstOrder =
        behaviour
            .of(instance)
            .filter(b -> !b.byState())
            .flatMap(CombinationBehaviour::firstOrderResult);
    return firstOrder
        .map(
            first ->
                new SummedForces(
                    analysis.frame(), instance, first.state().parts(), first::endForces, loads))
        .orElseGet(() -> summed(instance));
  }

  /** By sums over load cases: of a combination that has no solution as the state it ought to be. */
  private SummedForces summed(Instance instance) {
    List<LoadState.Part> parts = BehaviourAnalysis.state(instance).parts();
    List<LoadCase> cases = parts.stream().map(LoadState.Part::loads).toList();
    FrameSolution solution = analysis.solve(cases);
    return new SummedForces(
        analysis.frame(), instance, parts, segment -> sum(solution, parts, segment), loads);
  }

  private static double[] sum(FrameSolution solution, List<LoadState.Part> parts, Segment segment) {
    double[] sum = new double[SegmentModel.ENDS];
    for (LoadState.Part part : parts) {
      double[] own = solution.result(part.loads()).endForces(segment);
      for (int i = 0; i < sum.length; i++) {
        sum[i] += part.factor() * own[i];
      }
    }
    return sum;
  }
}
