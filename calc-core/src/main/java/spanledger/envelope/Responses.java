package spanledger.envelope;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.Combination;
import spanledger.action.LoadCase;
import spanledger.action.MovingLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.NodeInfluence;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentResponse;
import spanledger.frame.Frame;
import spanledger.frame.Segment;

/**
 * What the frame does under every fixed case, and under unit loads at the nodes that moving loads
 * can reach; all with one factorisation.
 */
final class Responses {

  private final Frame frame;
  private final FrameAnalysis analysis;
  private final FrameSolution solution;
  private final Map<String, Integer> caseIndices = new HashMap<>();
  private final SegmentInfluences influences;
  private final IdentityHashMap<MovingLoad, List<Stretch>> stretches = new IdentityHashMap<>();
  private final IdentityHashMap<Combination, CombinedCases> combined = new IdentityHashMap<>();
  private final SegmentResponse[][] bySegment;

  /**
   * @param places on how many places of each segment a moving load is looked at first
   */
  Responses(FrameAnalysis analysis, Actions actions, int places) {
    this.frame = analysis.frame();
    this.analysis = analysis;
    this.influences = new SegmentInfluences(analysis);
    List<LoadCase> cases = actions.cases().stream().map(CategorisedCase::loads).toList();
    solution = analysis.solve(cases);
    cases.forEach(c -> caseIndices.put(c.name(), caseIndices.size()));
    bySegment = new SegmentResponse[frame.segments().size()][];
    for (MovingLoad load : actions.movingLoads()) {
      stretches.put(load, Stretch.of(load, this, places));
    }
  }

  Frame frame() {
    return frame;
  }

  FrameAnalysis analysis() {
    return analysis;
  }

  /** The solved cases in order. */
  List<CaseResult> results() {
    return solution.results();
  }

  /** The place of a case among the solved ones. */
  int indexOf(LoadCase loadCase) {
    Integer index = caseIndices.get(loadCase.name());
    if (index == null) {
      throw new IllegalArgumentException("Case " + loadCase.name() + " was not solved.");
    }
    return index;
  }

  /** A combination as sums over the solved cases. */
  CombinedCases cases(Combination combination) {
    return combined.computeIfAbsent(combination, c -> new CombinedCases(this, c));
  }

  /** What a solved case does along a segment. */
  SegmentResponse of(LoadCase loadCase, Segment segment) {
    return along(segment)[indexOf(loadCase)];
  }

  /** What each solved case does along a segment, in their order; not to be modified. */
  SegmentResponse[] along(Segment segment) {
    SegmentResponse[] cached = bySegment[segment.index()];
    if (cached == null) {
      cached =
          results().stream()
              .map(r -> solution.response(segment, r.loadCase()))
              .toArray(SegmentResponse[]::new);
      bySegment[segment.index()] = cached;
    }
    return cached;
  }

  /** What a combination whose moving load stands somewhere does along a segment. */
  SegmentResponse of(Instance instance, Segment segment) {
    SegmentResponse state = SegmentResponse.none(analysis, segment);
    for (Combination.Term term : instance.terms()) {
      state = state.plus(of(term.loadCase(), segment), instance.combination().factor(term));
    }
    if (instance.standing().isPresent()) {
      for (SegmentInfluence.Placed part : place(instance.standing().get().placed())) {
        state = state.plus(part.response(segment), instance.standingFactor());
      }
    }
    return state;
  }

  /** How well the solved cases meet equilibrium. */
  Proof proof() {
    double worst = 0;
    for (CaseResult result : results()) {
      worst = Math.max(worst, result.equilibrium().nodeResidual());
    }
    return new Proof(results().size(), worst, analysis.unknowns());
  }

  /** The stretches on which a moving load stands. */
  List<Stretch> stretches(MovingLoad load) {
    List<Stretch> found = stretches.get(load);
    if (found == null) {
      throw new IllegalArgumentException("Load " + load.name() + " is not in the actions.");
    }
    return found;
  }

  /** Loads on segments of load paths, ready to be told what they do elsewhere. */
  List<SegmentInfluence.Placed> place(List<SegmentLoad> loads) {
    List<SegmentInfluence.Placed> placed = new ArrayList<>(loads.size());
    for (SegmentLoad load : loads) {
      placed.add(influences.of(load.segment()).place(load));
    }
    return placed;
  }

  /** The nodes that moving loads can reach. */
  Iterable<NodeInfluence> nodeInfluences() {
    return influences.nodes();
  }
}
