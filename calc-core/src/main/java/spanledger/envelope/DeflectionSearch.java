package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.Rail;
import spanledger.analysis.SegmentResponse;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * Finds the worst deflection of floor members from the line between their ends, their farthest
 * level movement, and the farthest movement of rails and posts, under serviceability combinations.
 *
 * <p>At one cut a deflection is a linear effect, so its worst is exact. Cuts are quarters of every
 * segment first; then the cut moves to where the deflection peaks in the worst state, as often as
 * that makes it worse.
 */
final class DeflectionSearch {

  private static final double[] CUTS = {0.25, 0.5, 0.75, 1};
  private static final int ROUNDS = 4;
  private static final Vector ALONG_X = new Vector(1, 0, 0);
  private static final Vector ALONG_Y = new Vector(0, 1, 0);

  /** What is looked for, and the worst found so far. */
  private static final class Goal {
    final Member member;
    final DeflectionFinding.Kind kind;
    final Vector direction;
    double worst = -1;
    @Nullable Instance instance;
    @Nullable Station station;

    Goal(Member member, DeflectionFinding.Kind kind, Vector direction) {
      this.member = member;
      this.kind = kind;
      this.direction = direction;
    }
  }

  private final Responses responses;
  private final List<Goal> goals = new ArrayList<>();

  DeflectionSearch(Responses responses, List<Rail> rails) {
    this.responses = responses;
    StandingHeight heights = new StandingHeight(responses.frame());
    for (Member member : responses.frame().members()) {
      if (member.role() == MemberRole.FLOOR) {
        goals.add(new Goal(member, DeflectionFinding.Kind.FROM_CHORD, Vector.DOWN));
      }
      if (heights.isJudged(member)) {
        goals.add(new Goal(member, DeflectionFinding.Kind.SWAY, ALONG_X));
        goals.add(new Goal(member, DeflectionFinding.Kind.SWAY, ALONG_Y));
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
        goals.stream()
            .anyMatch(
                g ->
                    g.member.name().equals(member.name())
                        && g.kind == DeflectionFinding.Kind.MOVEMENT
                        && Math.abs(g.direction.dot(direction)) > 1 - 1e-9);
    if (!known) {
      goals.add(new Goal(member, DeflectionFinding.Kind.MOVEMENT, direction));
    }
  }

  List<DeflectionFinding> run(List<Combination> combinations) {
    List<Combination> service =
        combinations.stream()
            .filter(c -> c.template().limitState() == LimitState.SERVICEABILITY)
            .toList();
    List<DeflectionFinding> findings = new ArrayList<>();
    if (service.isEmpty()) {
      return findings;
    }
    for (Goal goal : goals) {
      search(goal, service);
      if (goal.instance != null && goal.station != null) {
        findings.add(
            new DeflectionFinding(
                goal.member,
                goal.kind,
                goal.direction,
                new Governing(goal.instance, goal.station, goal.worst)));
      }
    }
    return findings;
  }

  private void search(Goal goal, List<Combination> combinations) {
    List<Segment> segments = responses.frame().segmentsOf(goal.member);
    tryCut(goal, new Station(segments.get(0), 0), combinations);
    for (Segment segment : segments) {
      for (double part : CUTS) {
        double x = part * responses.analysis().model(segment).length();
        tryCut(goal, new Station(segment, x), combinations);
      }
    }
    for (int round = 0; round < ROUNDS; round++) {
      double before = goal.worst;
      Instance instance = goal.instance;
      if (instance == null) {
        return;
      }
      for (Station peak : peaks(goal, instance, segments)) {
        tryCut(goal, peak, combinations);
      }
      if (goal.worst <= before * (1 + 1e-9)) {
        return;
      }
    }
  }

  private void tryCut(Goal goal, Station station, List<Combination> combinations) {
    LinearPeaks peaks =
        new LinearPeaks(
            responses, new CutDeflection(responses.analysis(), goal.kind, goal.direction, station));
    for (Combination combination : combinations) {
      take(goal, station, peaks.greatest(combination));
      take(goal, station, peaks.least(combination));
    }
  }

  private static void take(Goal goal, Station station, LinearPeaks.Peak peak) {
    double size = Math.abs(peak.value());
    if (size > goal.worst) {
      goal.worst = size;
      goal.instance = peak.instance();
      goal.station = station;
    }
  }

  /** The cuts inside segments at which the deflection of one state peaks and is near the worst. */
  private List<Station> peaks(Goal goal, Instance instance, List<Segment> segments) {
    List<Station> found = new ArrayList<>();
    for (Segment segment : segments) {
      double length = responses.analysis().model(segment).length();
      double atStart = value(goal, new Station(segment, 0), instance);
      double atEnd = value(goal, new Station(segment, length), instance);
      CutDeflection cut =
          new CutDeflection(
              responses.analysis(), goal.kind, goal.direction, new Station(segment, length / 2));
      SegmentResponse state = responses.of(instance, segment);
      Optional<Station> best = Optional.empty();
      double greatest = goal.worst;
      for (double x :
          state.deflectionStations(cut.alongY(), cut.alongZ(), (atEnd - atStart) / length)) {
        double here =
            Math.abs(
                atStart
                    + (atEnd - atStart) * x / length
                    + cut.alongY() * state.deflectionY(x)
                    + cut.alongZ() * state.deflectionZ(x));
        if (x > 0 && x < length && here > greatest) {
          greatest = here;
          best = Optional.of(new Station(segment, x));
        }
      }
      best.ifPresent(found::add);
    }
    return found;
  }

  private double value(Goal goal, Station station, Instance instance) {
    return new LinearPeaks(
            responses, new CutDeflection(responses.analysis(), goal.kind, goal.direction, station))
        .at(instance);
  }
}
