package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * Finds the worst deflection of floor members from the line between their ends, and the farthest
 * movement of rails and posts, under serviceability combinations.
 *
 * <p>Cuts are tried at quarters of every segment; the worst is then refined to the millimetre, and
 * so are the places of moving loads.
 */
final class DeflectionSearch {

  private static final double[] CUTS = {0, 0.25, 0.5, 0.75, 1};

  private final Responses responses;
  private final Frame frame;
  private final int places;
  private final MemberDeflection deflection;
  private final List<DeflectionTarget> targets = new ArrayList<>();

  DeflectionSearch(Responses responses, List<Rail> rails, int places) {
    this.responses = responses;
    this.frame = responses.frame();
    this.places = places;
    this.deflection = new MemberDeflection(responses);
    for (Member member : frame.members()) {
      if (member.role() == MemberRole.FLOOR) {
        targets.add(new DeflectionTarget(member, DeflectionFinding.Kind.FROM_CHORD, Vector.DOWN));
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
    for (Combination combination : combinations) {
      if (combination.template().limitState() == LimitState.SERVICEABILITY) {
        CombinedState state = responses.combined(combination);
        if (combination.moving().isPresent()) {
          tryMoving(combination, state);
        } else {
          Instance instance = new Instance(combination, Optional.empty());
          targets.forEach(t -> tryCuts(t, instance, state));
        }
      }
    }
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

  private double tryCuts(DeflectionTarget target, Instance instance, CombinedState state) {
    double worst = 0;
    for (Segment segment : frame.segmentsOf(target.member())) {
      for (double part : CUTS) {
        worst = Math.max(worst, tryCut(target, instance, state, segment, part * segment.length()));
      }
    }
    return worst;
  }

  private double tryCut(
      DeflectionTarget target, Instance instance, CombinedState state, Segment segment, double x) {
    double found =
        Math.abs(
            deflection.at(
                target,
                segment,
                x,
                state.movements(),
                state.endForces(),
                state.loads().get(segment.index())));
    target.offer(found, instance, new Station(segment, x));
    return found;
  }

  private void tryMoving(Combination combination, CombinedState fixed) {
    Combination.MovingTerm term = combination.moving().orElseThrow();
    List<MovingLoad.Lane> lanes = term.load().lanes();
    List<LaneTrials> trials = new ArrayList<>();
    targets.forEach(t -> trials.add(new LaneTrials(lanes.size(), places)));
    for (int l = 0; l < lanes.size(); l++) {
      Segment loaded = lanes.get(l).segment();
      for (int place = 0; place <= places; place++) {
        Standing standing =
            new Standing(term.load(), lanes.get(l), loaded.length() * place / places);
        CombinedState moved = moved(combination, fixed, standing);
        for (int t = 0; t < targets.size(); t++) {
          trials.get(t).offer(l, place, rank(targets.get(t), moved));
        }
      }
    }
    for (int t = 0; t < targets.size(); t++) {
      for (LaneTrials.Trial trial : trials.get(t).best()) {
        refinePlace(targets.get(t), combination, fixed, lanes.get(trial.lane()), trial);
      }
    }
  }

  /** The farthest of the member's nodes and of the middles of its segments. */
  private double rank(DeflectionTarget target, CombinedState state) {
    double worst = 0;
    for (Segment segment : frame.segmentsOf(target.member())) {
      for (double part : new double[] {0.5, 1}) {
        List<WeightedLoad> loads = state.loads().get(segment.index());
        worst =
            Math.max(
                worst,
                Math.abs(
                    deflection.at(
                        target,
                        segment,
                        part * segment.length(),
                        state.movements(),
                        state.endForces(),
                        loads)));
      }
    }
    return worst;
  }

  private void refinePlace(
      DeflectionTarget target,
      Combination combination,
      CombinedState fixed,
      MovingLoad.Lane lane,
      LaneTrials.Trial trial) {
    Combination.MovingTerm term = combination.moving().orElseThrow();
    double length = lane.segment().length();
    double coarse = length * trial.place() / places;
    if (tryStanding(target, combination, fixed, new Standing(term.load(), lane, coarse))
        < 0.9 * target.worst()) {
      return;
    }
    PlaceRefinement.overMillimetres(
        length * Math.max(0, trial.place() - 1) / places,
        length * Math.min(places, trial.place() + 1) / places,
        at ->
            tryStanding(
                target, combination, fixed, new Standing(term.load(), lane, Math.min(at, length))));
  }

  private double tryStanding(
      DeflectionTarget target, Combination combination, CombinedState fixed, Standing standing) {
    return tryCuts(
        target,
        new Instance(combination, Optional.of(standing)),
        moved(combination, fixed, standing));
  }

  private CombinedState moved(Combination combination, CombinedState fixed, Standing standing) {
    return responses.with(fixed, standing, combination.factor(combination.moving().orElseThrow()));
  }

  private void refineCut(DeflectionTarget target) {
    Governing found = target.found().orElse(null);
    if (found == null) {
      return;
    }
    Instance instance = found.instance();
    CombinedState fixed = responses.combined(instance.combination());
    CombinedState state =
        instance.standing().map(s -> moved(instance.combination(), fixed, s)).orElse(fixed);
    Segment segment = found.station().segment();
    double quarter = segment.length() / 4;
    PlaceRefinement.overMillimetres(
        Math.max(0, found.station().x() - quarter),
        Math.min(segment.length(), found.station().x() + quarter),
        x -> tryCut(target, instance, state, segment, x));
  }
}
