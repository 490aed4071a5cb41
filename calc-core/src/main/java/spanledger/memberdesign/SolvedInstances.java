package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.LoadCase;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.Reaction;
import spanledger.analysis.SegmentModel;
import spanledger.behaviour.Behaviour;
import spanledger.behaviour.BehaviourAnalysis;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.envelope.ReactionFinding;
import spanledger.envelope.StrengthFinding;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
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
    this(
        analysis,
        Set.of(limitState),
        combinations,
        (limitState == LimitState.SERVICEABILITY
                ? findings.deflections().stream().map(DeflectionFinding::governing)
                : findings.strength().stream().map(StrengthFinding::governing))
            .map(Governing::instance),
        behaviour);
  }

  private SolvedInstances(
      FrameAnalysis analysis,
      Set<LimitState> limitStates,
      List<Combination> combinations,
      Stream<Instance> governing,
      Behaviour behaviour) {
    this.analysis = analysis;
    loads = new CaseLoads(analysis);
    Map<String, Instance> instances = new LinkedHashMap<>();
    for (Combination combination : combinations) {
      boolean asked = limitStates.contains(combination.template().limitState());
      if (asked && combination.moving().isEmpty()) {
        Instance instance = new Instance(combination, combination.options(), Optional.empty());
        instances.put(instance.words(), instance);
      }
    }
    governing.forEach(instance -> instances.putIfAbsent(instance.words(), instance));
    for (Instance instance : instances.values()) {
      states.add(forces(instance, behaviour));
    }
  }

  /**
   * What feet must bear: combinations for strength and for stability, every pattern and place that
   * governs a reaction of some support, or some stress of some member. Parameters as of the other.
   */
  public static SolvedInstances ofFeet(
      FrameAnalysis analysis,
      List<Combination> combinations,
      Findings findings,
      Behaviour behaviour) {
    return new SolvedInstances(
        analysis,
        Set.of(LimitState.STRENGTH, LimitState.STABILITY),
        combinations,
        Stream.concat(
            findings.reactions().stream().map(ReactionFinding::instance),
            findings.strength().stream().map(finding -> finding.governing().instance())),
        behaviour);
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
                    analysis.frame(),
                    instance,
                    first.state().parts(),
                    first::endForces,
                    first::reaction,
                    loads))
        .orElseGet(() -> summed(instance));
  }

  /** By sums over load cases: of a combination that has no solution as the state it ought to be. */
  private SummedForces summed(Instance instance) {
    List<LoadState.Part> parts = BehaviourAnalysis.state(instance).parts();
    List<LoadCase> cases = parts.stream().map(LoadState.Part::loads).toList();
    FrameSolution solution = analysis.solve(cases);
    return new SummedForces(
        analysis.frame(),
        instance,
        parts,
        segment -> sum(solution, parts, segment),
        node -> sum(solution, parts, node),
        loads);
  }

  private static Reaction sum(FrameSolution solution, List<LoadState.Part> parts, Node node) {
    Vector force = Vector.ZERO;
    Vector moment = Vector.ZERO;
    for (LoadState.Part part : parts) {
      Reaction own = solution.result(part.loads()).reaction(node);
      force = force.plus(own.force().times(part.factor()));
      moment = moment.plus(own.moment().times(part.factor()));
    }
    return new Reaction(node, force, moment);
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
