package spanledger.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.Combination;
import spanledger.action.MovingLoad;
import spanledger.frame.Member;
import spanledger.frame.Segment;

/**
 * The search for the worst of every strength measure along one member.
 *
 * <p>Bounds first: internal forces under a load elsewhere lie in the hull of the control points of
 * their polynomials, and stresses grow with their size. Only where a bound does not rule it out are
 * stresses looked at, at every cut where one may peak; and only near the worst is a place refined.
 */
final class MemberStrength {

  /** How near to the worst a place must come, by a parabola, to be narrowed down. */
  private static final double WORTH = 1 + 1e-9;

  /** Places tried that come less near than this to the worst are not looked at more closely. */
  private static final double NEAR = 0.97;

  /**
   * By how much a kink under the load may lift a peak above a parabola through places beside it.
   */
  private static final double KINK = 3e-3;

  private static final double[] QUARTERS = {0, 0.25, 0.5, 0.75, 1};
  private static final int MEASURES = StrengthMeasure.values().length;

  /** A stretch of a load's path under one combination, with the measures it may reach. */
  private record Candidate(
      Combination combination, Stretch stretch, List<SegmentGrid> grids, double rank) {}

  private final Responses responses;
  private final List<Segment> segments;
  private final StrengthGoal[] goals;
  private final StrengthLook look;
  private final SectionCheck check;
  private final Optional<Station> only;
  private final IdentityHashMap<Stretch, List<StretchEffect>> effects = new IdentityHashMap<>();
  private final double[] sizes = new double[6];

  /**
   * @param only the one cut to look at, if not all
   */
  MemberStrength(
      Responses responses,
      Member member,
      SectionCheck check,
      List<StrengthGoal> goals,
      Optional<Station> only) {
    this.responses = responses;
    this.segments =
        only.map(s -> List.of(s.segment())).orElseGet(() -> responses.frame().segmentsOf(member));
    this.goals = goals.toArray(StrengthGoal[]::new);
    this.only = only;
    this.check = check;
    this.look = new StrengthLook(responses, check, goals, only);
  }

  void run(List<Combination> combinations) {
    List<Candidate> candidates = new ArrayList<>();
    for (Combination combination : combinations) {
      if (Arrays.stream(goals).noneMatch(g -> g.covers(combination))) {
        continue;
      }
      List<SegmentGrid> grids = new ArrayList<>(segments.size());
      segments.forEach(s -> grids.add(grid(combination, s)));
      if (combination.moving().isEmpty()) {
        tryFixed(combination, grids);
      } else {
        addCandidates(combination, grids, candidates);
      }
    }
    candidates.sort(Comparator.comparingDouble(Candidate::rank).reversed());
    candidates.forEach(this::workOut);
  }

  private SegmentGrid grid(Combination combination, Segment segment) {
    double[] cuts;
    if (only.isPresent()) {
      cuts = new double[] {only.get().x()};
    } else {
      cuts = new double[QUARTERS.length];
      for (int i = 0; i < cuts.length; i++) {
        cuts[i] = QUARTERS[i] * responses.analysis().model(segment).length();
      }
    }
    return new SegmentGrid(responses, combination, segment, cuts);
  }

  private void tryFixed(Combination combination, List<SegmentGrid> grids) {
    for (SegmentGrid grid : grids) {
      if (mayGovern(combination, grid, SegmentGrid.Reach.NONE, 0)) {
        look.at(grid, grid.fixed(), combination, Optional.empty());
      }
    }
  }

  /** Whether any goal may be beaten on a segment under a load elsewhere. */
  private boolean mayGovern(
      Combination combination, SegmentGrid grid, SegmentGrid.Reach reach, double factor) {
    for (int cut = 0; cut < grid.cuts().length; cut++) {
      grid.sizes(cut, reach, factor, sizes);
      check.rank(sizes, 0);
      for (StrengthGoal goal : goals) {
        if (check.ranked(goal.measure()) > goal.toBeat()
            && goal.covers(combination)
            && (goal.measure() != StrengthMeasure.WALL
                || check.most(goal.measure()) > goal.worst())) {
          return true;
        }
      }
    }
    return false;
  }

  /** The same with the forces of each control point kept together. */
  private boolean mayGovernAnywhere(
      Combination combination, SegmentGrid grid, StretchEffect effect, double factor) {
    if (!mayGovern(combination, grid, effect, factor)) {
      return false;
    }
    for (SegmentGrid.Reach point : effect.controlPoints()) {
      if (mayGovern(combination, grid, point, factor)) {
        return true;
      }
    }
    return false;
  }

  private void addCandidates(
      Combination combination, List<SegmentGrid> grids, List<Candidate> candidates) {
    MovingLoad load = combination.moving().orElseThrow().load();
    double factor = Math.abs(combination.factor(combination.moving().orElseThrow()));
    double[] fixed = new double[MEASURES];
    double[][] greatest = new double[grids.size()][6];
    for (int s = 0; s < greatest.length; s++) {
      SegmentGrid grid = grids.get(s);
      for (int cut = 0; cut < grid.cuts().length; cut++) {
        grid.sizes(cut, SegmentGrid.Reach.NONE, 0, sizes);
        rankInto(fixed);
        for (int k = 0; k < sizes.length; k++) {
          greatest[s][k] = Math.max(greatest[s][k], sizes[k]);
        }
      }
    }
    for (Stretch stretch : responses.stretches(load)) {
      boolean own = false;
      for (Segment segment : segments) {
        own |= stretch.touches(segment);
      }
      double rank =
          own
              ? Double.POSITIVE_INFINITY
              : rank(combination, effects(stretch), fixed, greatest, factor);
      if (rank >= 0) {
        candidates.add(new Candidate(combination, stretch, grids, rank));
      }
    }
  }

  /** The greatest utilisation that may beat a goal, 0 if only walls may, -1 if nothing may. */
  private double rank(
      Combination combination,
      List<StretchEffect> stretch,
      double[] fixed,
      double[][] greatest,
      double factor) {
    double[] alone = new double[MEASURES];
    double walls = 0;
    for (int s = 0; s < greatest.length; s++) {
      stretch.get(s).sizes(sizes);
      rankInto(alone);
      for (int k = 0; k < sizes.length; k++) {
        sizes[k] = greatest[s][k] + factor * sizes[k];
      }
      check.rank(sizes, 0);
      walls = Math.max(walls, check.most(StrengthMeasure.WALL));
    }
    double rank = -1;
    for (StrengthGoal goal : goals) {
      int m = goal.measure().ordinal();
      boolean wall = goal.measure() == StrengthMeasure.WALL;
      double bound = wall ? walls : check.bound(goal.measure(), fixed[m] + factor * alone[m]);
      if (goal.covers(combination) && bound > goal.worst()) {
        // Walls are bounded coarsely, which would upset the order.
        rank = Math.max(rank, wall ? 0 : bound);
      }
    }
    return rank;
  }

  private void rankInto(double[] greatest) {
    check.rank(sizes, 0);
    for (StrengthMeasure measure : StrengthMeasure.values()) {
      int m = measure.ordinal();
      greatest[m] = Math.max(greatest[m], check.ranked(measure));
    }
  }

  private List<StretchEffect> effects(Stretch stretch) {
    List<StretchEffect> found = effects.get(stretch);
    if (found == null) {
      found = new ArrayList<>(segments.size());
      for (Segment segment : segments) {
        found.add(new StretchEffect(stretch, responses.analysis().model(segment)));
      }
      effects.put(stretch, found);
    }
    return found;
  }

  private void workOut(Candidate candidate) {
    Combination combination = candidate.combination();
    Stretch stretch = candidate.stretch();
    double factor = combination.factor(combination.moving().orElseThrow());
    for (int s = 0; s < segments.size(); s++) {
      SegmentGrid grid = candidate.grids().get(s);
      if (stretch.touches(segments.get(s))) {
        refine(
            combination, stretch, true, at -> look.under(grid, combination, stretch.standing(at)));
      } else {
        StretchEffect effect = effects(stretch).get(s);
        if (mayGovernAnywhere(combination, grid, effect, factor)) {
          double[] start = new double[6];
          refine(
              combination,
              stretch,
              false,
              at -> {
                effect.startForces((at - stretch.from()) / (stretch.to() - stretch.from()), start);
                return look.at(
                    grid,
                    grid.fixed().plusStartForces(start, 0, factor),
                    combination,
                    Optional.of(stretch.standing(at)));
              });
        }
      }
    }
  }

  /** Looks at a segment with the load at a place and returns the greatest of each measure. */
  private interface Look {
    double[] at(double place);
  }

  private void refine(Combination combination, Stretch stretch, boolean kinked, Look look) {
    double[][] found = new double[Quartic.SAMPLES][];
    // Measures that peak side by side climb over the same places.
    Map<Double, double[]> looked = new HashMap<>();
    Look at = place -> looked.computeIfAbsent(place, p -> look.at(p).clone());
    for (int i = 0; i < found.length; i++) {
      found[i] = at.at(stretch.at(i));
    }
    for (StrengthMeasure measure : StrengthMeasure.values()) {
      int m = measure.ordinal();
      double worst = StrengthGoal.leastWorst(goals, measure, combination);
      for (int i = 0; i < found.length; i++) {
        int before = Math.max(0, i - 1);
        int after = Math.min(found.length - 1, i + 1);
        double here = found[i][m];
        if (here >= Math.max(found[before][m], found[after][m]) && here >= NEAR * worst) {
          PeakPlace.Bracket around =
              new PeakPlace.Bracket(
                  stretch.at(before),
                  stretch.at(i),
                  stretch.at(after),
                  found[before][m],
                  here,
                  found[after][m]);
          if (kinked && around.promise() * (1 + KINK) >= worst) {
            PeakPlace.climb(around, place -> at.at(place)[m]);
          } else if (!kinked) {
            PeakPlace.narrow(
                around,
                place -> at.at(place)[m],
                () -> WORTH * StrengthGoal.leastWorst(goals, measure, combination));
          }
        }
      }
    }
  }

  /** The findings, each worked out once more by the procedures. */
  List<StrengthFinding> found() {
    List<StrengthFinding> findings = new ArrayList<>();
    for (StrengthGoal goal : goals) {
      goal.found().ifPresent(governing -> findings.add(look.settled(goal, governing)));
    }
    return findings;
  }
}
