package spanledger.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import spanledger.action.Combination;
import spanledger.analysis.InternalForces;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.section.SectionProperties;

/**
 * Looks at the stresses of one segment under one state, at every cut where one may peak and with
 * the free parts acting that make it worst, and hands what is worse to the goals. One per thread.
 */
final class StrengthLook {

  /**
   * A cut just past a point load, mm: too near to change any force, too far for a spreadsheet,
   * which compares 14 digits or so, to take it for the load's own place.
   */
  static final double JUST_PAST = 1e-6;

  /** Change of 3τ², per σ², from which on it may shift the peak of the equivalent stress. */
  private static final double NOTABLE = 1e-6;

  private static final int EVEN = 8;
  private static final int FORCES = 6;

  /** How near to the worst a pattern must come at a cut for all cuts to be looked at with it. */
  private static final double NEAR = 0.995;

  /** The same where loads on the segment may bring more between the cuts: a parabola's shoulder. */
  private static final double NEAR_IF_LOADED = 0.93;

  /** Walls under less than this part of the stress needed need not be worked out. */
  private static final double FAR = 0.5;

  private final Responses responses;
  private final SectionCheck check;
  private final StrengthGoal[] goals;
  private final Optional<Station> only;
  private final PatternChoice choice;
  private final double[] greatest = new double[StrengthMeasure.values().length];
  private final double[] forces = new double[FORCES];

  StrengthLook(
      Responses responses, SectionCheck check, List<StrengthGoal> goals, Optional<Station> only) {
    this.responses = responses;
    this.check = check;
    this.goals = goals.toArray(StrengthGoal[]::new);
    this.only = only;
    this.choice = new PatternChoice(check);
  }

  /** Looks with a load standing on the segment itself. */
  double[] under(SegmentGrid grid, Combination combination, Standing standing) {
    return at(
        grid, loaded(grid, combination, Optional.of(standing)), combination, Optional.of(standing));
  }

  /** What always acts, with the moving load where it stands. */
  private SegmentResponse loaded(
      SegmentGrid grid, Combination combination, Optional<Standing> standing) {
    SegmentResponse response = grid.fixed();
    if (standing.isPresent()) {
      double factor = combination.factor(combination.moving().orElseThrow());
      for (SegmentInfluence.Placed part : responses.place(standing.get().placed())) {
        response = response.plus(part.response(grid.segment()), factor);
      }
    }
    return response;
  }

  /**
   * Looks at a state.
   *
   * @param state what acts beside the free parts
   * @return the greatest of each measure, overwritten by the next call
   */
  double[] at(
      SegmentGrid grid,
      SegmentResponse state,
      Combination combination,
      Optional<Standing> standing) {
    Arrays.fill(greatest, 0);
    double[] stations = stations(state);
    if (grid.options().isEmpty()) {
      for (double x : stations) {
        atStation(grid, state, combination, standing, x, new boolean[0]);
      }
      return greatest;
    }
    Set<BitSet> patterns = new LinkedHashSet<>();
    double[] cuts = withGrid(grid, stations);
    for (double x : cuts) {
      choosePatterns(grid, state, combination, x, patterns);
    }
    for (BitSet pattern : patterns) {
      boolean[] acts = new boolean[grid.options().size()];
      SegmentResponse sum = state;
      for (int i = pattern.nextSetBit(0); i >= 0; i = pattern.nextSetBit(i + 1)) {
        acts[i] = true;
        sum = sum.plus(grid.options().get(i), 1);
      }
      for (double x : stations(sum)) {
        atStation(grid, sum, combination, standing, x, acts);
      }
    }
    return greatest;
  }

  private double[] withGrid(SegmentGrid grid, double[] stations) {
    if (only.isPresent()) {
      return stations;
    }
    DoubleStream all = DoubleStream.concat(Arrays.stream(stations), Arrays.stream(grid.cuts()));
    for (SegmentResponse option : grid.options()) {
      // Stresses may peak where a free part stands.
      if (!option.isUnloaded()) {
        all = DoubleStream.concat(all, Arrays.stream(option.breaks()));
      }
    }
    return all.sorted().distinct().toArray();
  }

  /** The cuts at which a normal stress, a shear stress or both together may peak. */
  private double[] stations(SegmentResponse state) {
    if (only.isPresent()) {
      return new double[] {only.get().x()};
    }
    SectionProperties section = state.model().segment().member().section().properties();
    double[] stations =
        state.candidateStations(
            section.area(), section.elasticModulusY(), section.elasticModulusZ());
    if (state.isUnloaded()) {
      return stations;
    }
    return withEven(state, stations);
  }

  /** Adds evenly spaced cuts where the shear stress changes beside a small normal stress. */
  private double[] withEven(SegmentResponse state, double[] stations) {
    double[] breaks = state.breaks();
    List<Double> more = new ArrayList<>();
    for (int i = 0; i + 1 < breaks.length; i++) {
      double start = breaks[i];
      double span = breaks[i + 1] - start;
      if (span < 1) {
        continue;
      }
      double greatestNormal = 0;
      double greatestShear = 0;
      double leastShear = Double.POSITIVE_INFINITY;
      for (int k = 0; k < 3; k++) {
        state.forces(start + k * span / 2, k == 0 ? Side.AFTER : Side.BEFORE, forces);
        check.rank(forces, 0);
        greatestNormal = Math.max(greatestNormal, check.normal());
        greatestShear = Math.max(greatestShear, check.shear());
        leastShear = Math.min(leastShear, check.shear());
      }
      double change = 3 * (greatestShear * greatestShear - leastShear * leastShear);
      if (change > NOTABLE * greatestNormal * greatestNormal) {
        for (int k = 1; k < EVEN; k++) {
          more.add(start + span * k / EVEN);
        }
      }
    }
    if (more.isEmpty()) {
      return stations;
    }
    double[] all = Arrays.copyOf(stations, stations.length + more.size());
    for (int i = 0; i < more.size(); i++) {
      all[stations.length + i] = more.get(i);
    }
    Arrays.sort(all);
    return all;
  }

  private void atStation(
      SegmentGrid grid,
      SegmentResponse state,
      Combination combination,
      Optional<Standing> standing,
      double x,
      boolean[] acts) {
    evaluate(grid, state, combination, standing, x, Side.BEFORE, acts);
    if (only.isEmpty() && x > 0 && x < state.model().length()) {
      evaluate(grid, state, combination, standing, x, Side.AFTER, acts);
    }
  }

  private void evaluate(
      SegmentGrid grid,
      SegmentResponse state,
      Combination combination,
      Optional<Standing> standing,
      double x,
      Side side,
      boolean[] acts) {
    state.forces(x, side, forces);
    check.rank(forces, 0);
    for (StrengthGoal goal : goals) {
      double ranking = check.ranked(goal.measure());
      int m = goal.measure().ordinal();
      if (goal.measure() == StrengthMeasure.WALL && ranking < FAR * goal.toBeat()) {
        continue;
      }
      double value = check.quick(goal.measure());
      greatest[m] = Math.max(greatest[m], value);
      if (value > goal.worst() && goal.covers(combination)) {
        goal.take(
            value,
            check.needed(goal.measure(), value),
            new Instance(combination, pattern(combination, acts), standing),
            new Station(grid.segment(), side == Side.AFTER ? x + JUST_PAST : x));
      }
    }
  }

  private static List<Combination.Option> pattern(Combination combination, boolean[] acts) {
    List<Combination.Option> pattern = new ArrayList<>();
    for (int i = 0; i < acts.length; i++) {
      if (acts[i]) {
        pattern.add(combination.options().get(i));
      }
    }
    return pattern;
  }

  /** Adds the patterns that make a measure worst at a cut, if that comes near a goal. */
  private void choosePatterns(
      SegmentGrid grid,
      SegmentResponse state,
      Combination combination,
      double x,
      Set<BitSet> patterns) {
    double[][] parts = new double[grid.options().size()][FORCES];
    double[] here = new double[FORCES];
    // Without load on the segment nothing jumps, and nothing bends between the cuts.
    double near = grid.isLoaded() ? NEAR_IF_LOADED : NEAR;
    for (Side side : Side.values()) {
      state.forces(x, side, here);
      for (int i = 0; i < parts.length; i++) {
        grid.options().get(i).forces(x, side, parts[i]);
      }
      if (mayComeNear(combination, here, parts, near)) {
        choice.choose(here, parts, mayComeNear(combination, StrengthMeasure.WALL, near));
        for (StrengthMeasure measure : StrengthMeasure.values()) {
          double value = choice.best(measure);
          greatest[measure.ordinal()] = Math.max(greatest[measure.ordinal()], value);
          if (value > 0 && value >= near * StrengthGoal.leastWorst(goals, measure, combination)) {
            patterns.add(choice.pattern(measure));
          }
        }
      }
      if (state.isUnloaded() && !grid.isLoaded()) {
        return;
      }
    }
  }

  /** Whether any pattern may come near a goal: no force is greater than with all that raise it. */
  private boolean mayComeNear(
      Combination combination, double[] here, double[][] parts, double near) {
    for (int k = 0; k < FORCES; k++) {
      double high = here[k];
      double low = here[k];
      for (double[] part : parts) {
        high += Math.max(0, part[k]);
        low += Math.min(0, part[k]);
      }
      forces[k] = Math.max(Math.abs(high), Math.abs(low));
    }
    check.rank(forces, 0);
    for (StrengthMeasure measure : StrengthMeasure.values()) {
      if (mayComeNear(combination, measure, near)) {
        return true;
      }
    }
    return false;
  }

  /** The same for one measure, after the greatest forces were ranked. */
  private boolean mayComeNear(Combination combination, StrengthMeasure measure, double near) {
    double ranking = check.ranked(measure);
    for (StrengthGoal goal : goals) {
      if (goal.measure() == measure
          && goal.covers(combination)
          && (measure == StrengthMeasure.WALL
              // Walls grow with the root of the stress at least.
              ? ranking >= near * near * goal.toBeat() && check.most(measure) >= near * goal.worst()
              : ranking >= near * goal.toBeat())) {
        return true;
      }
    }
    return false;
  }

  /** The state of a finding, all that acts in it. */
  private SegmentResponse settled(Governing governing) {
    Combination combination = governing.instance().combination();
    SegmentGrid grid =
        new SegmentGrid(responses, combination, governing.station().segment(), new double[] {0});
    SegmentResponse state = loaded(grid, combination, governing.instance().standing());
    for (int i = 0; i < combination.options().size(); i++) {
      if (governing.instance().pattern().contains(combination.options().get(i))) {
        state = state.plus(grid.options().get(i), 1);
      }
    }
    return state;
  }

  /**
   * A finding with its cut narrowed down and everything worked out by the procedures, as the
   * workbook does.
   */
  StrengthFinding settled(StrengthGoal goal, Governing governing) {
    SegmentResponse state = settled(governing);
    double x = governing.station().x();
    double best = byProcedures(goal, state, x);
    if (only.isEmpty() && goal.measure() == StrengthMeasure.COMBINED && !state.isUnloaded()) {
      double[] breaks = state.breaks();
      for (int i = 0; i + 1 < breaks.length; i++) {
        if (x > breaks[i] && x <= breaks[i + 1]) {
          double narrowed =
              GoldenSection.peak(
                  Math.max(breaks[i] + JUST_PAST, x - (breaks[i + 1] - breaks[i]) / EVEN),
                  Math.min(breaks[i + 1], x + (breaks[i + 1] - breaks[i]) / EVEN),
                  at -> byProcedures(goal, state, at));
          double value = byProcedures(goal, state, narrowed);
          if (value > best) {
            best = value;
            x = narrowed;
          }
        }
      }
    }
    InternalForces at = state.at(x, Side.BEFORE);
    return goal.finding(
        new Governing(governing.instance(), new Station(governing.station().segment(), x), best),
        at);
  }

  private double byProcedures(StrengthGoal goal, SegmentResponse state, double x) {
    InternalForces at = state.at(x, Side.BEFORE);
    forces[0] = at.axial();
    forces[1] = at.shearY();
    forces[2] = at.shearZ();
    forces[3] = at.torque();
    forces[4] = at.momentY();
    forces[5] = at.momentZ();
    check.evaluate(forces);
    return check.value(goal.measure());
  }
}
