package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.InternalForces;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.behaviour.Behaviour;
import spanledger.envelope.Findings;
import spanledger.envelope.Instance;
import spanledger.envelope.Standing;
import spanledger.envelope.Station;
import spanledger.envelope.StrengthFinding;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.section.SectionProperties;

/**
 * Strength combinations, each with its moving load at one place: all without a moving load under
 * all imposed loads, and every pattern and place that governs some stress of some member. Those
 * that were solved as states give the forces of these, the others sums of the first order.
 */
public final class SolvedInstances {

  private final FrameSolution solution;
  private final List<MemberForces> states = new ArrayList<>();

  /**
   * Solves those that are not at hand.
   *
   * @param findings of the linear search, which chooses patterns and places
   * @param behaviour the combinations that were solved as states
   * @throws spanledger.analysis.MechanismException if one loads a turn that nothing holds
   */
  public SolvedInstances(
      FrameAnalysis analysis,
      List<Combination> combinations,
      Findings findings,
      Behaviour behaviour) {
    Map<String, Instance> instances = new LinkedHashMap<>();
    for (Combination combination : combinations) {
      boolean strength = combination.template().limitState() == LimitState.STRENGTH;
      if (strength && combination.moving().isEmpty()) {
        Instance instance = new Instance(combination, combination.options(), Optional.empty());
        instances.put(instance.words(), instance);
      }
    }
    for (StrengthFinding finding : findings.strength()) {
      Instance instance = finding.governing().instance();
      instances.putIfAbsent(instance.words(), instance);
    }
    Map<String, LoadCase> summed = new LinkedHashMap<>();
    for (Instance instance : instances.values()) {
      if (behaviour.stateOf(instance).isEmpty()) {
        summed.put(instance.words(), loads(instance));
      }
    }
    solution = analysis.solve(List.copyOf(summed.values()));
    for (Instance instance : instances.values()) {
      LoadCase loads = summed.get(instance.words());
      states.add(
          loads == null
              ? new StateForces(
                  analysis.frame(), instance, behaviour.stateOf(instance).orElseThrow())
              : new Solved(instance, loads));
    }
  }

  /** The states, fixed combinations first. */
  public Collection<MemberForces> states() {
    return List.copyOf(states);
  }

  private static LoadCase loads(Instance instance) {
    List<NodalLoad> nodal = new ArrayList<>();
    List<SegmentLoad> along = new ArrayList<>();
    Combination combination = instance.combination();
    for (Combination.Term term : instance.terms()) {
      double factor = combination.factor(term);
      for (NodalLoad load : term.loadCase().nodalLoads()) {
        nodal.add(
            new NodalLoad(
                load.node(), load.force().times(factor), load.moment().times(factor), load.what()));
      }
      term.loadCase().segmentLoads().forEach(load -> along.add(times(load, factor)));
    }
    for (SegmentLoad load : instance.standing().map(Standing::placed).orElse(List.of())) {
      along.add(times(load, instance.standingFactor()));
    }
    return new LoadCase(instance.words(), nodal, along);
  }

  private static SegmentLoad times(SegmentLoad load, double factor) {
    if (load instanceof SegmentLoad.Point point) {
      return new SegmentLoad.Point(
          point.segment(),
          point.axes(),
          point.direction(),
          point.origin(),
          factor * point.force(),
          point.at());
    }
    SegmentLoad.Distributed spread = (SegmentLoad.Distributed) load;
    return new SegmentLoad.Distributed(
        spread.segment(),
        spread.axes(),
        spread.direction(),
        spread.origin(),
        factor * spread.intensityFrom(),
        factor * spread.intensityTo(),
        spread.from(),
        spread.to());
  }

  /** One of them. */
  private final class Solved implements MemberForces {
    private final Instance instance;
    private final LoadCase loads;
    private final Map<Integer, SegmentResponse> responses = new LinkedHashMap<>();

    Solved(Instance instance, LoadCase loads) {
      this.instance = instance;
      this.loads = loads;
    }

    @Override
    public Instance instance() {
      return instance;
    }

    @Override
    public List<Station> cuts(Member member) {
      SectionProperties section = member.section().properties();
      List<Station> cuts = new ArrayList<>();
      for (Segment segment : solution.analysis().frame().segmentsOf(member)) {
        double[] places =
            response(segment)
                .candidateStations(
                    section.area(), section.elasticModulusY(), section.elasticModulusZ());
        Arrays.stream(places).distinct().forEach(x -> cuts.add(new Station(segment, x)));
      }
      return cuts;
    }

    @Override
    public void at(Station cut, double[] into) {
      SegmentResponse response = response(cut.segment());
      if (cut.x() > 0) {
        response.forces(cut.x(), Side.BEFORE, into);
        return;
      }
      // A load on the very start lies after this cut; the curve begins after it.
      InternalForces atStart = response.at(cut.x(), Side.BEFORE);
      into[0] = atStart.axial();
      into[1] = atStart.shearY();
      into[2] = atStart.shearZ();
      into[3] = atStart.torque();
      into[4] = atStart.momentY();
      into[5] = atStart.momentZ();
    }

    private SegmentResponse response(Segment segment) {
      return responses.computeIfAbsent(segment.index(), i -> solution.response(segment, loads));
    }
  }
}
