package spanledger.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.MovingLoad;
import spanledger.action.Rail;
import spanledger.analysis.WeightedLoad;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * Finds the worst deflection of floor members from the line between their ends, their farthest
 * level movement, and the farthest movement of rails and posts, under serviceability combinations.
 *
 * <p>Cuts are tried at quarters of every segment; the worst is then refined to a few millimetres,
 * and so are the places of moving loads.
 */
final class DeflectionSearch {

  /** How near to the worst found a place must come to be worked out and refined. */
  static final double NEAR = 0.95;

  private static final double[] CUTS = {0, 0.25, 0.5, 0.75, 1};

  private static final Vector ALONG_X = new Vector(1, 0, 0);
  private static final Vector ALONG_Y = new Vector(0, 1, 0);

  private final Responses responses;
  private final Frame frame;
  private final LanePlaces places;
  private final MemberDeflection deflection;
  private final List<DeflectionTarget> targets = new ArrayList<>();

  DeflectionSearch(Responses responses, List<Rail> rails, LanePlaces places) {
    this.responses = responses;
    this.frame = responses.frame();
    this.places = places;
    this.deflection = new MemberDeflection(responses);
    StandingHeight heights = new StandingHeight(frame);
    for (Member member : frame.members()) {
      if (member.role() == MemberRole.FLOOR) {
        targets.add(new DeflectionTarget(member, DeflectionFinding.Kind.FROM_CHORD, Vector.DOWN));
        if (heights.isAbove(member)) {
          targets.add(new DeflectionTarget(member, DeflectionFinding.Kind.SWAY, ALONG_X));
          targets.add(new DeflectionTarget(member, DeflectionFinding.Kind.SWAY, ALONG_Y));
        }
      }
    }
    for (Rail rail : rails) {
      for (Member member : rail.members()) {
        addMovement(member, rail.outward());
        addMovement(member, Vector.DOWN);
      }
      for (Member post : rail.posts()) {
        addMovement(post, rail.outward());
      }
    }
  }

  private void addMovement(Member member, Vector direction) {
    boolean known =
        targets.stream()
            .anyMatch(
                t ->
                    t.member().name().equals(member.name())
                        && t.kind() == DeflectionFinding.Kind.MOVEMENT
                        && Math.abs(t.direction().dot(direction)) > 1 - 1e-9);
    if (!known) {
      targets.add(new DeflectionTarget(member, DeflectionFinding.Kind.MOVEMENT, direction));
    }
  }

  List<DeflectionFinding> run(List<Combination> combinations) {
    List<CombinedState> moving = new ArrayList<>();
    for (Combination combination : combinations) {
      if (combination.template().limitState() == LimitState.SERVICEABILITY) {
        CombinedState state = responses.combined(combination);
        if (combination.moving().isPresent()) {
          moving.add(state);
        } else {
          Instance instance = new Instance(combination, Optional.empty());
          targets.forEach(
              t ->
                  tryCuts(
                      t,
                      frame.segmentsOf(t.member()),
                      instance,
                      state.movements(),
                      state.endForces(),
                      state.loads()));
        }
      }
    }
    tryMoving(moving);
    List<DeflectionFinding> findings = new ArrayList<>();
    for (DeflectionTarget target : targets) {
      refineCut(target);
      target
          .found()
          .ifPresent(
              g ->
                  findings.add(
                      new DeflectionFinding(
                          target.member(), target.kind(), target.direction(), g)));
    }
    return findings;
  }

  /** The worst cut of the segments looked at, and the deflection there, mm. */
  private record Look(Station where, double deflection) {}

  private Look tryCuts(
      DeflectionTarget target,
      List<Segment> segments,
      Instance instance,
      double[] movements,
      double[] endForces,
      List<List<WeightedLoad>> loads) {
    Station where = new Station(segments.get(0), 0);
    double worst = -1;
    for (Segment segment : segments) {
      double length = responses.analysis().model(segment).length();
      for (double part : CUTS) {
        double x = part * length;
        double found =
            Math.abs(
                deflection.at(
                    target, segment, x, movements, endForces, loads.get(segment.index())));
        if (found > target.worst()) {
          target.offer(found, instance, new Station(segment, x));
        }
        if (found > worst) {
          worst = found;
          where = new Station(segment, x);
        }
      }
    }
    return new Look(where, worst);
  }

  private void tryMoving(List<CombinedState> states) {
    DeflectionBounds bounds = new DeflectionBounds(responses, deflection, places);
    for (DeflectionTarget target : targets) {
      PriorityQueue<Candidate> candidates = new PriorityQueue<>(Candidate.HIGHEST_FIRST);
      states.forEach(state -> bounds.addTo(candidates, target, state));
      List<Tried> tried = new ArrayList<>();
      while (!candidates.isEmpty()) {
        Candidate candidate = candidates.remove();
        if (candidate.bound() < NEAR * target.worst()) {
          break;
        }
        MovingLoad.Lane lane = candidate.lane();
        double at = places.at(lane.segment().length(), candidate.place());
        Look look =
            tryStanding(
                target,
                frame.segmentsOf(target.member()),
                new MemberState(responses, candidate.state(), lane, target.member()),
                at);
        tried.add(new Tried(candidate, look.where().segment(), look.deflection()));
      }
      tried.sort(Comparator.comparingDouble(Tried::value).reversed());
      Set<String> refined = new HashSet<>();
      for (Tried one : tried) {
        if (one.value() >= NEAR * target.worst()) {
          refine(target, one, refined);
        }
      }
    }
  }

  /** Narrows the place down on the stretches beside it that have not been looked at before. */
  private void refine(DeflectionTarget target, Tried tried, Set<String> refined) {
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
    // The worst place is looked for where the deflection is worst already.
    List<Segment> there = List.of(tried.segment());
    DoubleUnaryOperator stand =
        at -> tryStanding(target, there, moved, LanePlaces.within(length, at)).deflection();
    double expected =
        PlaceRefinement.expected(
            stand.applyAsDouble(low), tried.value(), stand.applyAsDouble(high));
    if (expected >= StrengthSearch.WORTH * target.worst()) {
      PlaceRefinement.overMillimetres(low, high, stand);
    }
  }

  private Look tryStanding(
      DeflectionTarget target, List<Segment> segments, MemberState moved, double at) {
    moved.standAt(at);
    return tryCuts(
        target, segments, moved.instance(), moved.movements(), moved.endForces(), moved.loads());
  }

  private void refineCut(DeflectionTarget target) {
    Governing found = target.found().orElse(null);
    if (found == null) {
      return;
    }
    Instance instance = found.instance();
    CombinedState fixed = responses.combined(instance.combination());
    CombinedState state =
        instance
            .standing()
            .map(s -> responses.with(fixed, s, instance.standingFactor()))
            .orElse(fixed);
    Segment segment = found.station().segment();
    double length = responses.analysis().model(segment).length();
    PlaceRefinement.overMillimetres(
        Math.max(0, found.station().x() - length / 4),
        Math.min(length, found.station().x() + length / 4),
        x -> {
          double here =
              Math.abs(
                  deflection.at(
                      target,
                      segment,
                      x,
                      state.movements(),
                      state.endForces(),
                      state.loads().get(segment.index())));
          target.offer(here, instance, new Station(segment, x));
          return here;
        });
  }
}
