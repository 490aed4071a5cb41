package spanledger.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.MovingLoad;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.WeightedLoad;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.resistance.ResistanceFactors;

/**
 * Finds the worst combination, place of a moving load and cut for every strength measure of every
 * member.
 *
 * <p>Fixed combinations are cut wherever a stress may peak. For moving loads every lane is first
 * ranked at evenly spaced places by a bound, the stress under the fixed part plus that under the
 * load alone; the places are then worked out from the highest bound down, until no bound left comes
 * near the worst found, and a place that does is refined between its neighbours, with all cuts.
 */
final class StrengthSearch {

  /** How near to the worst found a place must come to be worked out and refined. */
  static final double NEAR = 0.95;

  /** How near to the worst found a place is expected to come for narrowing down to be worth it. */
  static final double WORTH = 0.999;

  /** The measures that candidates are ranked by; walls are looked at wherever stresses are. */
  private static final List<StrengthMeasure> RANKED =
      List.of(StrengthMeasure.COMBINED, StrengthMeasure.BENDING, StrengthMeasure.SHEAR);

  private static final int ENDS = SegmentModel.ENDS;

  private final Responses responses;
  private final Frame frame;
  private final LanePlaces places;
  private final Map<String, Integer> memberIndices = new HashMap<>();
  private final PeakCuts peaks = new PeakCuts();
  private final List<StrengthTarget> targets = new ArrayList<>();
  private final List<SectionCheck> checks = new ArrayList<>();
  private final CutForces cuts = new CutForces();
  private final double[] forces = new double[CutForces.COUNT];

  /**
   * @param places the places tried before refinement
   */
  StrengthSearch(
      Responses responses, PostBases bases, ResistanceFactors factors, LanePlaces places) {
    this.responses = responses;
    this.frame = responses.frame();
    this.places = places;
    for (Member member : frame.members()) {
      memberIndices.put(member.name(), memberIndices.size());
      checks.add(new SectionCheck(member, factors));
      addTargets(member, bases);
    }
  }

  private void addTargets(Member member, PostBases bases) {
    targets.add(
        new StrengthTarget(
            member,
            StrengthFinding.Scope.ALL,
            EnumSet.allOf(StrengthMeasure.class),
            Optional.empty()));
    if (member.role() == MemberRole.RAIL) {
      targets.add(
          new StrengthTarget(
              member,
              StrengthFinding.Scope.GUARDRAIL,
              EnumSet.of(StrengthMeasure.COMBINED),
              Optional.empty()));
    }
    Optional<Station> base = bases.of(member);
    if (base.isPresent()) {
      targets.add(
          new StrengthTarget(
              member,
              StrengthFinding.Scope.POST_BASE,
              EnumSet.of(StrengthMeasure.BENDING, StrengthMeasure.COMBINED),
              base));
    }
  }

  List<StrengthFinding> run(List<Combination> combinations) {
    List<CombinedState> moving = new ArrayList<>();
    for (Combination combination : combinations) {
      if (combination.template().limitState() != LimitState.STRENGTH) {
        continue;
      }
      CombinedState state = responses.combined(combination);
      if (combination.moving().isPresent()) {
        moving.add(state);
      } else {
        tryFixed(state);
      }
    }
    tryMoving(moving);
    List<StrengthFinding> findings = new ArrayList<>();
    targets.forEach(target -> findings.addAll(target.found()));
    return findings;
  }

  private void tryFixed(CombinedState state) {
    Instance instance = new Instance(state.combination(), Optional.empty());
    for (StrengthTarget target : targets) {
      if (target.covers(state.combination())) {
        tryCuts(
            target, frame.segmentsOf(target.member()), instance, state.endForces(), state.loads());
      }
    }
  }

  /** Looks at every cut of some segments of the target where a stress may peak. */
  private void tryCuts(
      StrengthTarget target,
      List<Segment> segments,
      Instance instance,
      double[] endForces,
      List<List<WeightedLoad>> loads) {
    if (target.only().isPresent()) {
      Station station = target.only().get();
      int segment = station.segment().index();
      tryCut(target, instance, station.segment(), station.x(), endForces, loads.get(segment));
      return;
    }
    for (Segment segment : segments) {
      List<WeightedLoad> own = loads.get(segment.index());
      for (double x : peaks.of(responses.analysis().model(segment), endForces, own)) {
        tryCut(target, instance, segment, x, endForces, own);
      }
    }
  }

  private void tryCut(
      StrengthTarget target,
      Instance instance,
      Segment segment,
      double x,
      double[] endForces,
      List<WeightedLoad> loads) {
    cuts.at(endForces, segment.index() * ENDS, loads, x, forces, 0);
    SectionCheck check = check(target.member());
    check.evaluate(forces);
    for (StrengthMeasure measure : target.measures()) {
      double value = check.value(measure);
      if (value > target.worst(measure)) {
        target.offer(
            target.finding(
                measure, new Governing(instance, new Station(segment, x), value), forces));
      }
    }
  }

  private SectionCheck check(Member member) {
    Integer index = memberIndices.get(member.name());
    if (index == null) {
      throw new IllegalArgumentException("No member is named " + member.name() + ".");
    }
    return checks.get(index);
  }

  private void tryMoving(List<CombinedState> states) {
    StrengthBounds bounds = new StrengthBounds(responses, checks, places);
    for (StrengthTarget target : targets) {
      // A stretch refined for one measure has been looked at for all, so it is not refined twice.
      Set<String> refined = new HashSet<>();
      for (StrengthMeasure measure : RANKED) {
        if (target.measures().contains(measure)) {
          PriorityQueue<Candidate> candidates = new PriorityQueue<>(Candidate.HIGHEST_FIRST);
          for (CombinedState state : states) {
            if (target.covers(state.combination())) {
              bounds.addTo(candidates, target, measure, state);
            }
          }
          workOut(target, measure, candidates, refined);
        }
      }
    }
  }

  /** Works candidates out from the highest bound down. */
  private void workOut(
      StrengthTarget target,
      StrengthMeasure measure,
      PriorityQueue<Candidate> candidates,
      Set<String> refined) {
    List<Tried> tried = new ArrayList<>();
    while (!candidates.isEmpty()) {
      Candidate candidate = candidates.remove();
      if (candidate.bound() < NEAR * target.worst(measure)) {
        break;
      }
      MovingLoad.Lane lane = candidate.lane();
      double at = places.at(lane.segment().length(), candidate.place());
      tryStanding(
              target,
              frame.segmentsOf(target.member()),
              measure,
              new MemberState(responses, candidate.state(), lane, target.member()),
              at)
          .ifPresent(
              f ->
                  tried.add(
                      new Tried(
                          candidate, f.governing().station().segment(), f.governing().value())));
    }
    tried.sort(Comparator.comparingDouble(Tried::value).reversed());
    for (Tried one : tried) {
      if (one.value() < NEAR * target.worst(measure)) {
        return;
      }
      refine(target, measure, one, refined);
    }
  }

  /** Narrows the place down on the stretches beside it that have not been looked at before. */
  private void refine(
      StrengthTarget target, StrengthMeasure measure, Tried tried, Set<String> refined) {
    Candidate candidate = tried.candidate();
    MovingLoad.Lane lane = candidate.lane();
    int place = candidate.place();
    String around = candidate.state().combination().name() + lane.segment().index() + "|";
    boolean before = refined.add(around + place);
    boolean after = refined.add(around + (place + 1));
    if (!before && !after) {
      return;
    }
    double length = lane.segment().length();
    double here = places.at(length, place);
    double low = before ? places.before(length, place) : here;
    double high = after ? places.after(length, place) : here;
    MemberState moved = new MemberState(responses, candidate.state(), lane, target.member());
    // The worst place is looked for where the stress is worst already.
    List<Segment> there = List.of(tried.segment());
    DoubleUnaryOperator stand =
        at -> value(tryStanding(target, there, measure, moved, LanePlaces.within(length, at)));
    double expected =
        PlaceRefinement.expected(
            stand.applyAsDouble(low), tried.value(), stand.applyAsDouble(high));
    if (expected >= WORTH * target.worst(measure)) {
      PlaceRefinement.overMillimetres(low, high, stand);
    }
  }

  private static double value(Optional<StrengthFinding> found) {
    return found.map(f -> f.governing().value()).orElse(-1.0);
  }

  /**
   * Puts the load at a place, looks at all cuts of some segments of the target, and returns the
   * worst of the measure.
   */
  private Optional<StrengthFinding> tryStanding(
      StrengthTarget target,
      List<Segment> segments,
      StrengthMeasure measure,
      MemberState moved,
      double at) {
    moved.standAt(at);
    StrengthTarget here =
        new StrengthTarget(target.member(), target.scope(), target.measures(), target.only());
    tryCuts(here, segments, moved.instance(), moved.endForces(), moved.loads());
    here.found().forEach(target::offer);
    return here.found().stream().filter(f -> f.measure() == measure).findFirst();
  }
}
