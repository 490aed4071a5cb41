package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.MovingLoad;
import spanledger.action.NodalLoad;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;

/**
 * Finds the greatest and least reaction of every support along X, Y and Z, under strength and under
 * stability combinations.
 */
final class ReactionSearch {

  private static final int SIX = 6;
  private static final int ENDS = SegmentModel.ENDS;
  private static final List<Freedom> SHIFTS =
      List.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z);

  /** An extreme looked for, and the worst found so far. */
  private static final class Extreme {
    final Support support;
    final Freedom freedom;
    final boolean greatest;
    final LimitState limitState;
    Optional<Instance> where = Optional.empty();
    double value;

    Extreme(Support support, Freedom freedom, boolean greatest, LimitState limitState) {
      this.support = support;
      this.freedom = freedom;
      this.greatest = greatest;
      this.limitState = limitState;
    }

    double signed(double reaction) {
      return greatest ? reaction : -reaction;
    }

    void offer(double reaction, Instance instance) {
      if (where.isEmpty() || signed(reaction) > signed(value)) {
        value = reaction;
        where = Optional.of(instance);
      }
    }
  }

  private final Responses responses;
  private final Frame frame;
  private final int places;
  private final List<Extreme> extremes = new ArrayList<>();
  private final double[] own = new double[ENDS];
  private final double[] onNodes = new double[ENDS];

  ReactionSearch(Responses responses, int places) {
    this.responses = responses;
    this.frame = responses.frame();
    this.places = places;
    for (Support support : frame.supports()) {
      for (Freedom freedom : SHIFTS) {
        if (!(support.restraint(freedom) instanceof Restraint.Free)) {
          for (LimitState state : List.of(LimitState.STRENGTH, LimitState.STABILITY)) {
            extremes.add(new Extreme(support, freedom, true, state));
            extremes.add(new Extreme(support, freedom, false, state));
          }
        }
      }
    }
  }

  List<ReactionFinding> run(List<Combination> combinations) {
    for (Combination combination : combinations) {
      LimitState state = combination.template().limitState();
      if (state == LimitState.SERVICEABILITY) {
        continue;
      }
      CombinedState fixed = responses.combined(combination);
      if (combination.moving().isPresent()) {
        tryMoving(combination, fixed);
      } else {
        Instance instance = new Instance(combination, Optional.empty());
        for (Extreme extreme : extremes) {
          if (extreme.limitState == state) {
            extreme.offer(reaction(extreme, combination, fixed), instance);
          }
        }
      }
    }
    List<ReactionFinding> findings = new ArrayList<>();
    for (Extreme e : extremes) {
      e.where.ifPresent(
          i ->
              findings.add(
                  new ReactionFinding(e.support, e.freedom, e.greatest, e.limitState, i, e.value)));
    }
    return findings;
  }

  private void tryMoving(Combination combination, CombinedState fixed) {
    Combination.MovingTerm term = combination.moving().orElseThrow();
    double factor = combination.factor(term);
    List<MovingLoad.Lane> lanes = term.load().lanes();
    List<LaneTrials> trials = new ArrayList<>();
    extremes.forEach(e -> trials.add(new LaneTrials(lanes.size(), places)));
    for (int l = 0; l < lanes.size(); l++) {
      double length = lanes.get(l).segment().length();
      for (int place = 0; place <= places; place++) {
        Standing standing = new Standing(term.load(), lanes.get(l), length * place / places);
        CombinedState moved = responses.with(fixed, standing, factor);
        for (int e = 0; e < extremes.size(); e++) {
          Extreme extreme = extremes.get(e);
          if (extreme.limitState == combination.template().limitState()) {
            double reaction = reaction(extreme, combination, moved);
            trials.get(e).offer(l, place, extreme.signed(reaction));
          }
        }
      }
    }
    for (int e = 0; e < extremes.size(); e++) {
      if (extremes.get(e).limitState == combination.template().limitState()) {
        for (LaneTrials.Trial trial : trials.get(e).best()) {
          refine(extremes.get(e), combination, fixed, lanes.get(trial.lane()), trial);
        }
      }
    }
  }

  private void refine(
      Extreme extreme,
      Combination combination,
      CombinedState fixed,
      MovingLoad.Lane lane,
      LaneTrials.Trial trial) {
    double length = lane.segment().length();
    standing(extreme, combination, fixed, lane, length * trial.place() / places);
    PlaceRefinement.overMillimetres(
        length * Math.max(0, trial.place() - 1) / places,
        length * Math.min(places, trial.place() + 1) / places,
        at -> standing(extreme, combination, fixed, lane, Math.min(at, length)));
  }

  private double standing(
      Extreme extreme,
      Combination combination,
      CombinedState fixed,
      MovingLoad.Lane lane,
      double at) {
    Combination.MovingTerm term = combination.moving().orElseThrow();
    Standing standing = new Standing(term.load(), lane, at);
    double reaction =
        reaction(extreme, combination, responses.with(fixed, standing, combination.factor(term)));
    extreme.offer(reaction, new Instance(combination, Optional.of(standing)));
    return extreme.signed(reaction);
  }

  /** What the segments take from the supported node, less what loads on the node give. */
  private double reaction(Extreme extreme, Combination combination, CombinedState state) {
    Node node = extreme.support.node();
    int freedom = extreme.freedom.ordinal();
    double sum = 0;
    for (Segment segment : responses.segmentsAt(node)) {
      System.arraycopy(state.endForces(), segment.index() * ENDS, own, 0, ENDS);
      responses.analysis().model(segment).nodeForces(own, onNodes);
      if (segment.first().name().equals(node.name())) {
        sum += onNodes[freedom];
      }
      if (segment.second().name().equals(node.name())) {
        sum += onNodes[SIX + freedom];
      }
    }
    for (Combination.Term term : combination.terms()) {
      for (NodalLoad load : term.loadCase().nodalLoads()) {
        if (load.node().name().equals(node.name())) {
          sum -= combination.factor(term) * component(load, freedom);
        }
      }
    }
    return sum;
  }

  private static double component(NodalLoad load, int freedom) {
    return switch (freedom) {
      case 0 -> load.force().x();
      case 1 -> load.force().y();
      default -> load.force().z();
    };
  }
}
