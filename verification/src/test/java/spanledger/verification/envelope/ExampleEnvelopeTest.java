package spanledger.verification.envelope;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.action.LoadCase;
import spanledger.action.LoadPath;
import spanledger.action.MovingLoad;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.Findings;
import spanledger.envelope.ForceEnvelope;
import spanledger.envelope.ForceExtreme;
import spanledger.envelope.Instance;
import spanledger.envelope.ReactionFinding;
import spanledger.envelope.Standing;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Freedom;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.resistance.ResistanceFactors;
import spanledger.verification.workbook.PackingHouse;

/**
 * What governs the packing house, against solving it anew: no influence lines, no bounds, no
 * refinement, and stresses written out by hand.
 */
class ExampleEnvelopeTest {

  /** Steps of the search of all places, mm; not a divisor of the spans of 1200, 1000 or 500 mm. */
  private static final double STEP = 130;

  /** Cuts of a segment in the search of all places. */
  private static final int CUTS = 6;

  private static final List<StrengthMeasure> MEASURES =
      List.of(StrengthMeasure.BENDING, StrengthMeasure.SHEAR, StrengthMeasure.COMBINED);

  private static Job job;
  private static Actions actions;
  private static FrameAnalysis analysis;
  private static ResistanceFactors factors;
  private static Findings found;
  private static List<ForceEnvelope> envelopes;

  @BeforeAll
  static void search() {
    job = ((ReadJob.Accepted) new JobReader(Tables.shipped()).read(PackingHouse.JOB)).job();
    actions =
        ActionPlanner.plan(
            job.frame(),
            job.surfaces(),
            job.rails(),
            job.userCases(),
            job.rules(),
            job.combinations());
    analysis = new FrameAnalysis(job.frame());
    factors = ResistanceFactors.of(job.rules());
    EnvelopeSearch search =
        new EnvelopeSearch(analysis, actions, job.rails(), factors, job.placesPerSegment());
    found = search.run();
    envelopes = search.forces();
  }

  /**
   * Every strength finding is a state that exists: its combination, solved as one load case, has
   * that utilisation at that cut. Tolerance: rounding of two ways to add up.
   */
  @Test
  void everyStrengthFindingIsReproducedByItsOwnLoadCase() {
    Map<Instance, LoadCase> cases = new HashMap<>();
    for (StrengthFinding finding : found.strength()) {
      cases.computeIfAbsent(finding.governing().instance(), i -> single("case " + cases.size(), i));
    }
    FrameSolution solution = analysis.solve(List.copyOf(cases.values()));
    int compared = 0;
    for (StrengthFinding finding : found.strength()) {
      if (!MEASURES.contains(finding.measure())) {
        continue;
      }
      compared++;
      LoadCase loads = cases.get(finding.governing().instance());
      SegmentResponse response =
          solution.response(
              finding.governing().station().segment(), java.util.Objects.requireNonNull(loads));
      Stresses stresses = Stresses.of(finding.member(), factors);
      double x = finding.governing().station().x();
      double before = stresses.utilisation(finding.measure(), response.at(x, Side.BEFORE));
      double after = stresses.utilisation(finding.measure(), response.at(x, Side.AFTER));
      double value = finding.governing().value();
      assertThat(Math.min(Math.abs(before - value), Math.abs(after - value)))
          .as("%s %s %s", finding.member().name(), finding.measure(), finding.governing())
          .isLessThanOrEqualTo(1e-9 * value + 1e-12);
    }
    assertThat(compared).isGreaterThan(3 * 83 - 1);
  }

  /** Every extreme reaction is the reaction in its own load case. */
  @Test
  void everyReactionFindingIsReproducedByItsOwnLoadCase() {
    Map<Instance, LoadCase> cases = new HashMap<>();
    found
        .reactions()
        .forEach(f -> cases.computeIfAbsent(f.instance(), i -> single("case " + cases.size(), i)));
    FrameSolution solution = analysis.solve(List.copyOf(cases.values()));
    for (ReactionFinding finding : found.reactions()) {
      LoadCase loads = java.util.Objects.requireNonNull(cases.get(finding.instance()));
      double reaction = component(solution, loads, finding.support(), finding.freedom());
      assertThat(finding.value())
          .as(finding.support().node().name() + " " + finding.freedom())
          // N: rounding in reactions of up to some thousand N.
          .isCloseTo(reaction, org.assertj.core.data.Offset.offset(1e-6));
    }
    assertThat(found.reactions()).hasSizeGreaterThan(100);
  }

  /**
   * Every extreme force is that of its own load case at its cut. Tolerance: rounding of two ways to
   * add up forces of some kN with arms of some metres.
   */
  @Test
  void everyExtremeForceIsReproducedByItsOwnLoadCase() {
    Map<Instance, LoadCase> cases = new HashMap<>();
    List<ForceExtreme> extremes = new ArrayList<>();
    for (ForceEnvelope envelope : envelopes) {
      extremes.addAll(envelope.governing());
      extremes.addAll(envelope.atEnds());
    }
    extremes.forEach(
        e ->
            cases.computeIfAbsent(
                e.governing().instance(), i -> single("case " + cases.size(), i)));
    FrameSolution solution = analysis.solve(List.copyOf(cases.values()));
    for (ForceExtreme extreme : extremes) {
      LoadCase loads = java.util.Objects.requireNonNull(cases.get(extreme.governing().instance()));
      SegmentResponse response = solution.response(extreme.governing().station().segment(), loads);
      double force =
          Force.of(extreme.effect(), response.at(extreme.governing().station().x(), Side.BEFORE));
      assertThat(Math.abs(extreme.governing().value() - force))
          .as("%s", extreme)
          .isLessThanOrEqualTo(1e-9 * Math.abs(force) + 1e-4);
    }
    assertThat(envelopes).hasSize(83);
    assertThat(extremes.size()).isEqualTo(83 * 12 + job.frame().segments().size() * 2 * 12);
  }

  private static LoadCase single(String name, Instance instance) {
    return Single.of(name, instance);
  }

  private static double component(
      FrameSolution solution, LoadCase loads, Support support, Freedom freedom) {
    var reaction = solution.result(loads).reaction(support.node());
    Vector of = freedom.isShift() ? reaction.force() : reaction.moment();
    return switch (freedom) {
      case SHIFT_X, TURN_X -> of.x();
      case SHIFT_Y, TURN_Y -> of.y();
      case SHIFT_Z, TURN_Z -> of.z();
    };
  }

  /**
   * No state of a search of all places on a grid is worse than what was found, and what was found
   * is not far above the worst of the grid.
   */
  @Test
  void noPlaceOfAnyLoadIsWorseThanWhatWasFound() {
    Map<String, EnumMap<StrengthMeasure, Double>> worst = new HashMap<>();
    Map<String, double[]> forces = new HashMap<>();
    int states = 0;
    for (Combination combination : actions.combinations()) {
      if (combination.template().limitState() == LimitState.STRENGTH) {
        List<LoadCase> cases = cases(combination);
        states += cases.size();
        evaluate(analysis.solve(cases), cases, worst, forces);
      }
    }
    assertThat(states).isGreaterThan(1000);
    double closest = 0;
    for (StrengthFinding finding : found.strength()) {
      if (finding.scope() != StrengthFinding.Scope.ALL || !MEASURES.contains(finding.measure())) {
        continue;
      }
      double onGrid =
          java.util.Objects.requireNonNull(
              java.util.Objects.requireNonNull(worst.get(finding.member().name()))
                  .get(finding.measure()));
      double value = finding.governing().value();
      assertThat(value)
          .as(finding.member().name() + " " + finding.measure())
          .isGreaterThanOrEqualTo(onGrid * (1 - missed(finding.measure())));
      // A load 65 mm beside the worst place of a span of 500 mm or more has at least 3/4 of the
      // effect.
      assertThat(onGrid)
          .as(finding.member().name() + " " + finding.measure())
          .isGreaterThan(0.75 * value);
      closest = Math.max(closest, onGrid / value);
    }
    assertThat(closest).isGreaterThan(0.99);
    noForceOfTheGridIsBeyondItsEnvelope(forces);
  }

  /** Forces are linear effects, so rounding only: N, N·mm. */
  private static void noForceOfTheGridIsBeyondItsEnvelope(Map<String, double[]> onGrid) {
    for (ForceEnvelope envelope : envelopes) {
      double[] met =
          java.util.Objects.requireNonNull(onGrid.get(envelope.member().name()), "the grid");
      for (ForceExtreme extreme : envelope.governing()) {
        double sign = extreme.greatest() ? 1 : -1;
        double beyond = sign * (met[Force.index(extreme)] - extreme.governing().value());
        assertThat(beyond)
            .as(envelope.member().name() + " " + extreme)
            .isLessThanOrEqualTo(1e-9 * Math.abs(extreme.governing().value()) + 1e-4);
      }
    }
  }

  /**
   * By how much a state of the grid may be worse. Bending and shear peak at the cuts that are
   * looked at, so rounding only. The equivalent stress may peak between cuts where the shear stress
   * changes along a member that hardly bends; cuts an eighth apart leave less than this.
   */
  private static double missed(StrengthMeasure measure) {
    return measure == StrengthMeasure.COMBINED ? 1e-3 : 1e-9;
  }

  /**
   * Every place on a grid, with every pattern of the free parts; beside moving loads only with all,
   * none and each one.
   */
  private static List<LoadCase> cases(Combination combination) {
    List<Optional<Standing>> places = new ArrayList<>();
    if (combination.moving().isEmpty()) {
      places.add(Optional.empty());
    } else {
      MovingLoad load = combination.moving().get().load();
      for (LoadPath path : load.paths()) {
        for (double at = load.first(path); at <= load.last(path); at += STEP) {
          places.add(Optional.of(new Standing(load, path, at)));
        }
      }
    }
    List<LoadCase> cases = new ArrayList<>();
    List<List<Combination.Option>> patterns =
        combination.moving().isEmpty()
            ? Patterns.all(combination.options())
            : Patterns.few(combination.options());
    for (List<Combination.Option> pattern : patterns) {
      for (Optional<Standing> place : places) {
        cases.add(Single.of("state " + cases.size(), new Instance(combination, pattern, place)));
      }
    }
    return cases;
  }

  private static void evaluate(
      FrameSolution solution,
      List<LoadCase> cases,
      Map<String, EnumMap<StrengthMeasure, Double>> worst,
      Map<String, double[]> extremes) {
    for (Segment segment : job.frame().segments()) {
      Stresses stresses = Stresses.of(segment.member(), factors);
      EnumMap<StrengthMeasure, Double> of =
          worst.computeIfAbsent(segment.member().name(), n -> new EnumMap<>(StrengthMeasure.class));
      for (LoadCase loads : cases) {
        SegmentResponse response = solution.response(segment, loads);
        for (int i = 0; i <= CUTS; i++) {
          var forces = response.at(segment.length() * i / CUTS, Side.BEFORE);
          Force.widen(
              extremes.computeIfAbsent(segment.member().name(), n -> Force.nothing()), forces);
          for (StrengthMeasure measure : MEASURES) {
            of.merge(measure, stresses.utilisation(measure, forces), Math::max);
          }
        }
      }
    }
  }
}
