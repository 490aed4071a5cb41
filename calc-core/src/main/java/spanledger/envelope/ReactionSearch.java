package spanledger.envelope;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.MovingLoad;
import spanledger.action.NodalLoad;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;

/**
 * Finds the greatest and least reaction of every support along X, Y and Z, under strength and under
 * stability combinations.
 */
final class ReactionSearch {

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

    /** Whether a signed reaction found at evenly spaced places may lead to the extreme. */
    boolean isNear(double found) {
      return where.isEmpty() || found > signed(value) - 0.05 * Math.abs(value);
    }

    void offer(double reaction, Instance instance) {
      if (where.isEmpty() || signed(reaction) > signed(value)) {
        value = reaction;
        where = Optional.of(instance);
      }
    }
  }

  private final Responses responses;
  private final LanePlaces places;
  private final List<Extreme> extremes = new ArrayList<>();

  /** By support and freedom: the reaction to a unit load on each freedom of each node. */
  private final Map<String, double[]> influences = new HashMap<>();

  /** By load, lane and place: what the load hands to the nodes of its segment. */
  private final Map<String, double[][][]> onNodes = new HashMap<>();

  ReactionSearch(Responses responses, LanePlaces places) {
    this.responses = responses;
    this.places = places;
    for (Support support : responses.frame().supports()) {
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
      if (combination.template().limitState() == LimitState.SERVICEABILITY) {
        continue;
      }
      CombinedState fixed = responses.combined(combination);
      for (Extreme extreme : extremes) {
        if (extreme.limitState == combination.template().limitState()) {
          double reaction = reaction(extreme, fixed);
          if (combination.moving().isPresent()) {
            tryMoving(extreme, fixed, reaction);
          } else {
            extreme.offer(reaction, new Instance(combination, Optional.empty()));
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

  private void tryMoving(Extreme extreme, CombinedState fixed, double ofFixed) {
    Combination.MovingTerm term = fixed.combination().moving().orElseThrow();
    double factor = fixed.combination().factor(term);
    List<MovingLoad.Lane> lanes = term.load().lanes();
    double[][][] tried = onNodes.computeIfAbsent(term.load().name(), n -> onNodes(term.load()));
    double[] influence = influence(extreme);
    LaneTrials trials = new LaneTrials(lanes.size(), places.last());
    for (int l = 0; l < lanes.size(); l++) {
      for (int place = 0; place <= places.last(); place++) {
        double moving = responses.effect(tried[l][place], lanes.get(l).segment(), influence);
        trials.offer(l, place, extreme.signed(ofFixed + factor * moving));
      }
    }
    for (LaneTrials.Trial trial : trials.best()) {
      if (extreme.isNear(trial.rank())) {
        MovingLoad.Lane lane = lanes.get(trial.lane());
        double length = responses.analysis().model(lane.segment()).length();
        DoubleUnaryOperator stand =
            at -> stand(extreme, fixed, ofFixed, influence, lane, LanePlaces.within(length, at));
        stand(extreme, fixed, ofFixed, influence, lane, places.at(length, trial.place()));
        PlaceRefinement.overMillimetres(
            places.before(length, trial.place()), places.after(length, trial.place()), stand);
      }
    }
  }

  private double[][][] onNodes(MovingLoad load) {
    double[][][] all = new double[load.lanes().size()][places.last() + 1][];
    for (int l = 0; l < all.length; l++) {
      MovingLoad.Lane lane = load.lanes().get(l);
      double length = responses.analysis().model(lane.segment()).length();
      for (int place = 0; place <= places.last(); place++) {
        all[l][place] =
            responses.onNodes(
                responses.local(load.placed(lane, places.at(length, place))), lane.segment());
      }
    }
    return all;
  }

  private double[] influence(Extreme extreme) {
    Node node = extreme.support.node();
    return influences.computeIfAbsent(
        node.name() + "/" + extreme.freedom,
        key -> responses.reactionInfluence(node, extreme.freedom));
  }

  private double stand(
      Extreme extreme,
      CombinedState fixed,
      double ofFixed,
      double[] influence,
      MovingLoad.Lane lane,
      double at) {
    Combination.MovingTerm term = fixed.combination().moving().orElseThrow();
    double[] handed =
        responses.onNodes(responses.local(term.load().placed(lane, at)), lane.segment());
    double reaction =
        ofFixed
            + fixed.combination().factor(term)
                * responses.effect(handed, lane.segment(), influence);
    if (extreme.where.isEmpty() || extreme.signed(reaction) > extreme.signed(extreme.value)) {
      extreme.offer(
          reaction,
          new Instance(fixed.combination(), Optional.of(new Standing(term.load(), lane, at))));
    }
    return extreme.signed(reaction);
  }

  /** What the segments take from the supported node, less what loads on the node give. */
  private double reaction(Extreme extreme, CombinedState state) {
    Node node = extreme.support.node();
    double sum = responses.taken(state.endForces(), node, extreme.freedom);
    for (Combination.Term term : state.combination().terms()) {
      for (NodalLoad load : term.loadCase().nodalLoads()) {
        if (load.node().name().equals(node.name())) {
          sum -= state.combination().factor(term) * component(load, extreme.freedom);
        }
      }
    }
    return sum;
  }

  private static double component(NodalLoad load, Freedom freedom) {
    return switch (freedom) {
      case SHIFT_X -> load.force().x();
      case SHIFT_Y -> load.force().y();
      case SHIFT_Z -> load.force().z();
      case TURN_X -> load.moment().x();
      case TURN_Y -> load.moment().y();
      case TURN_Z -> load.moment().z();
    };
  }
}
