package spanledger.envelope;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.MovingLoad;
import spanledger.analysis.LocalLoad;
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
 * <p>Fixed combinations are cut wherever a stress may peak. For a moving load, every lane is first
 * tried at evenly spaced places; every place whose rank comes near the worst is then refined
 * between its neighbours, with all cuts.
 */
final class StrengthSearch {

  /** How near to the worst a first try must come to be refined. */
  private static final double NEAR = 0.9;

  private static final Set<StrengthMeasure> RANKED =
      EnumSet.of(StrengthMeasure.BENDING, StrengthMeasure.SHEAR, StrengthMeasure.COMBINED);

  private static final int ENDS = SegmentModel.ENDS;
  private static final double[] FIRST_CUTS = {0, 0.5, 1};

  private final Responses responses;
  private final Frame frame;
  private final int places;
  private final List<StrengthTarget> targets = new ArrayList<>();
  private final List<SectionCheck> checks = new ArrayList<>();
  private final Map<String, Integer> memberIndices = new HashMap<>();
  private final PeakCuts peaks = new PeakCuts();
  private final CutForces cuts = new CutForces();
  private final double[] forces = new double[CutForces.COUNT];

  /**
   * @param places tries per lane before refinement
   */
  StrengthSearch(Responses responses, PostBases bases, ResistanceFactors factors, int places) {
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
    Set<StrengthMeasure> guardrail = EnumSet.of(StrengthMeasure.COMBINED);
    if (member.role() == MemberRole.RAIL) {
      targets.add(
          new StrengthTarget(member, StrengthFinding.Scope.GUARDRAIL, guardrail, Optional.empty()));
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
    List<Combination> moving = new ArrayList<>();
    for (Combination combination : combinations) {
      if (combination.template().limitState() != LimitState.STRENGTH) {
        continue;
      }
      if (combination.moving().isPresent()) {
        moving.add(combination);
      } else {
        tryFixed(combination);
      }
    }
    moving.forEach(this::tryMoving);
    List<StrengthFinding> findings = new ArrayList<>();
    for (StrengthTarget target : targets) {
      for (Map.Entry<StrengthMeasure, Governing> found : target.found().entrySet()) {
        findings.add(
            new StrengthFinding(target.member(), found.getKey(), target.scope(), found.getValue()));
      }
    }
    return findings;
  }

  private void tryFixed(Combination combination) {
    CombinedState state = responses.combined(combination);
    Instance instance = new Instance(combination, Optional.empty());
    for (StrengthTarget target : targets) {
      if (target.covers(combination)) {
        tryCuts(target, instance, state.endForces(), state.loads());
      }
    }
  }

  /** Looks at every cut of the target where a stress may peak. */
  private void tryCuts(
      StrengthTarget target,
      Instance instance,
      double[] endForces,
      List<List<WeightedLoad>> loads) {
    if (target.only().isPresent()) {
      Station station = target.only().get();
      int segment = station.segment().index();
      tryCut(target, instance, station.segment(), station.x(), endForces, loads.get(segment));
      return;
    }
    for (Segment segment : frame.segmentsOf(target.member())) {
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
        target.offer(measure, value, instance, new Station(segment, x));
      }
    }
  }

  private SectionCheck check(Member member) {
    return checks.get(memberIndex(member));
  }

  private int memberIndex(Member member) {
    Integer index = memberIndices.get(member.name());
    if (index == null) {
      throw new IllegalArgumentException("No member is named " + member.name() + ".");
    }
    return index;
  }

  private void tryMoving(Combination combination) {
    Combination.MovingTerm term = combination.moving().orElseThrow();
    CombinedState state = responses.combined(combination);
    FirstTrials trials = firstTrials(term, combination.factor(term), state);
    for (StrengthTarget target : targets) {
      if (target.covers(combination)) {
        for (StrengthMeasure measure : target.measures()) {
          if (measure != StrengthMeasure.WALL) {
            for (LaneTrials.Trial trial : trials.of(target, measure).best()) {
              refine(target, measure, combination, state, trial);
            }
          }
        }
      }
    }
  }

  /** Ranks by member and measure, at all cuts and at the post's base. */
  private final class FirstTrials {
    private final List<Map<StrengthMeasure, LaneTrials>> anywhere = new ArrayList<>();
    private final List<Map<StrengthMeasure, LaneTrials>> atBase = new ArrayList<>();

    FirstTrials(int lanes) {
      for (int i = 0; i < frame.members().size(); i++) {
        anywhere.add(fresh(lanes));
        atBase.add(fresh(lanes));
      }
    }

    private Map<StrengthMeasure, LaneTrials> fresh(int lanes) {
      Map<StrengthMeasure, LaneTrials> trials = new EnumMap<>(StrengthMeasure.class);
      for (StrengthMeasure measure : RANKED) {
        trials.put(measure, new LaneTrials(lanes, places));
      }
      return trials;
    }

    LaneTrials of(StrengthTarget target, StrengthMeasure measure) {
      List<Map<StrengthMeasure, LaneTrials>> from = target.only().isPresent() ? atBase : anywhere;
      LaneTrials trials = from.get(memberIndex(target.member())).get(measure);
      if (trials == null) {
        throw new IllegalArgumentException("No ranks are kept for " + measure + ".");
      }
      return trials;
    }

    void offer(StrengthTarget target, int lane, int place, SectionCheck check) {
      for (StrengthMeasure measure : RANKED) {
        of(target, measure).offer(lane, place, check.ranked(measure));
      }
    }
  }

  private FirstTrials firstTrials(Combination.MovingTerm term, double factor, CombinedState state) {
    List<MovingLoad.Lane> lanes = term.load().lanes();
    FirstTrials trials = new FirstTrials(lanes.size());
    double[] endForces = new double[state.endForces().length];
    for (int l = 0; l < lanes.size(); l++) {
      Segment loaded = lanes.get(l).segment();
      for (int place = 0; place <= places; place++) {
        double at = loaded.length() * place / places;
        LocalLoad load = responses.local(term.load().placed(lanes.get(l), at));
        System.arraycopy(state.endForces(), 0, endForces, 0, endForces.length);
        responses.addAllEndForces(load, loaded, factor, endForces);
        WeightedLoad standing = new WeightedLoad(load, factor);
        for (StrengthTarget target : targets) {
          rankCuts(target, state, endForces, loaded, at, standing, trials, l, place);
        }
      }
    }
    return trials;
  }

  private void rankCuts(
      StrengthTarget target,
      CombinedState state,
      double[] endForces,
      Segment loaded,
      double at,
      WeightedLoad standing,
      FirstTrials trials,
      int lane,
      int place) {
    if (target.scope() == StrengthFinding.Scope.GUARDRAIL) {
      return; // the same ranks as for all combinations
    }
    SectionCheck check = check(target.member());
    if (target.only().isPresent()) {
      Station station = target.only().get();
      List<WeightedLoad> loads =
          withStanding(
              state.loads().get(station.segment().index()), station.segment(), loaded, standing);
      cuts.at(endForces, station.segment().index() * ENDS, loads, station.x(), forces, 0);
      check.rank(forces, 0);
      trials.offer(target, lane, place, check);
      return;
    }
    for (Segment segment : frame.segmentsOf(target.member())) {
      List<WeightedLoad> loads =
          withStanding(state.loads().get(segment.index()), segment, loaded, standing);
      for (double part : FIRST_CUTS) {
        cuts.at(endForces, segment.index() * ENDS, loads, part * segment.length(), forces, 0);
        check.rank(forces, 0);
        trials.offer(target, lane, place, check);
      }
      if (segment.index() == loaded.index()) {
        cuts.at(endForces, segment.index() * ENDS, loads, at, forces, 0);
        check.rank(forces, 0);
        trials.offer(target, lane, place, check);
      }
    }
  }

  private static List<WeightedLoad> withStanding(
      List<WeightedLoad> loads, Segment segment, Segment loaded, WeightedLoad standing) {
    if (segment.index() != loaded.index()) {
      return loads;
    }
    List<WeightedLoad> all = new ArrayList<>(loads);
    all.add(standing);
    return all;
  }

  private void refine(
      StrengthTarget target,
      StrengthMeasure measure,
      Combination combination,
      CombinedState state,
      LaneTrials.Trial trial) {
    Combination.MovingTerm term = combination.moving().orElseThrow();
    MovingLoad.Lane lane = term.load().lanes().get(trial.lane());
    double length = lane.segment().length();
    MovedState moved = new MovedState(combination, term, lane, state, target.member());
    double first = tryStanding(target, measure, moved, length * trial.place() / places);
    if (first < NEAR * target.worst(measure)) {
      return;
    }
    PlaceRefinement.overMillimetres(
        length * Math.max(0, trial.place() - 1) / places,
        length * Math.min(places, trial.place() + 1) / places,
        at -> tryStanding(target, measure, moved, Math.min(at, length)));
  }

  /**
   * Puts the load at a place, looks at all cuts of the target, and returns the greatest value of
   * the measure.
   */
  private double tryStanding(
      StrengthTarget target, StrengthMeasure measure, MovedState moved, double at) {
    moved.standAt(at);
    StrengthTarget here =
        new StrengthTarget(target.member(), target.scope(), target.measures(), target.only());
    tryCuts(here, moved.instance(), moved.endForces(), moved.loads());
    here.found().forEach((m, g) -> target.offer(m, g.value(), g.instance(), g.station()));
    return here.worst(measure);
  }

  /** A combination with its moving load standing, for the segments of one member. */
  private final class MovedState {
    private final Combination combination;
    private final Combination.MovingTerm term;
    private final MovingLoad.Lane lane;
    private final CombinedState fixed;
    private final Member member;
    private final double[] endForces;
    private List<List<WeightedLoad>> loads;
    private Instance instance;

    MovedState(
        Combination combination,
        Combination.MovingTerm term,
        MovingLoad.Lane lane,
        CombinedState fixed,
        Member member) {
      this.combination = combination;
      this.term = term;
      this.lane = lane;
      this.fixed = fixed;
      this.member = member;
      this.endForces = new double[fixed.endForces().length];
      this.loads = fixed.loads();
      this.instance = new Instance(combination, Optional.of(new Standing(term.load(), lane, 0)));
    }

    void standAt(double at) {
      Standing standing = new Standing(term.load(), lane, at);
      instance = new Instance(combination, Optional.of(standing));
      LocalLoad load = responses.local(standing.placed());
      double factor = combination.factor(term);
      for (Segment segment : frame.segmentsOf(member)) {
        int from = segment.index() * ENDS;
        System.arraycopy(fixed.endForces(), from, endForces, from, ENDS);
        responses.addEndForces(load, lane.segment(), factor, segment, endForces, from);
      }
      loads = fixed.loads();
      if (lane.segment().member().name().equals(member.name())) {
        loads = new ArrayList<>(fixed.loads());
        int loaded = lane.segment().index();
        List<WeightedLoad> own = new ArrayList<>(loads.get(loaded));
        own.add(new WeightedLoad(load, factor));
        loads.set(loaded, own);
      }
    }

    Instance instance() {
      return instance;
    }

    double[] endForces() {
      return endForces;
    }

    List<List<WeightedLoad>> loads() {
      return loads;
    }
  }
}
