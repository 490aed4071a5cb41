package spanledger.verification.envelope;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import spanledger.action.ActionCategory;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.Combination;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.RuleSet;
import spanledger.action.SegmentLoad;
import spanledger.action.UserCase;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.Findings;
import spanledger.envelope.Instance;
import spanledger.envelope.ReactionFinding;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.ResistanceFactors;
import spanledger.section.RectangularHollow;
import spanledger.section.Section;

/** The patterns found, against solving every on/off pattern of random loads on a bent frame. */
class PatternProperties {

  private static final Source INVENTED = Source.declared("invented for this property");
  private static final int LOADS = 6;
  private static final Alloy ALLOY =
      new Alloy(
          "test alloy",
          Set.of(ProductForm.HOLLOW_PROFILE),
          new ThicknessRange(0, 25),
          160,
          195,
          BucklingClass.A,
          Optional.empty(),
          OptionalDouble.empty(),
          70000,
          27000,
          2.7e-6,
          INVENTED,
          "");
  private static final Section TUBE = new Section("tube", new RectangularHollow(100, 50, 4, 4));
  private static final RuleSet RULES =
      new RuleSet(
          "test",
          "test",
          Map.of(RuleSet.RESISTANCE_DIVISOR, figure(RuleSet.RESISTANCE_DIVISOR, 1.1)),
          List.of());

  private static Figure figure(String id, double value) {
    return new Figure(id, id, "", value, Dimension.NONE, INVENTED, "");
  }

  /** No pattern of the 64 is worse than what was found, and what was found is one of them. */
  @Property(tries = 200)
  void noPatternIsWorseThanWhatWasFound(@ForAll Random random) {
    Frame frame = frame();
    FrameAnalysis analysis = new FrameAnalysis(frame);
    Actions actions = actions(frame, random);
    ResistanceFactors factors = ResistanceFactors.of(RULES);
    Findings found = new EnvelopeSearch(analysis, actions, List.of(), factors, 4).run();

    Combination combination = actions.combinations().get(0);
    assertThat(combination.options()).hasSize(LOADS);
    List<LoadCase> cases = new ArrayList<>();
    for (List<Combination.Option> pattern : Patterns.all(combination.options())) {
      cases.add(
          Single.of(
              "pattern " + cases.size(), new Instance(combination, pattern, Optional.empty())));
    }
    FrameSolution solution = analysis.solve(cases);
    Map<String, Double> worst = new HashMap<>();
    for (Segment segment : frame.segments()) {
      Stresses stresses = Stresses.of(segment.member(), factors);
      for (LoadCase pattern : cases) {
        SegmentResponse response = solution.response(segment, pattern);
        for (double x : response.breaks()) {
          for (StrengthMeasure measure :
              List.of(StrengthMeasure.BENDING, StrengthMeasure.SHEAR, StrengthMeasure.COMBINED)) {
            double value =
                Math.max(
                    stresses.utilisation(measure, response.at(x, Side.BEFORE)),
                    x < segment.length()
                        ? stresses.utilisation(measure, response.at(x, Side.AFTER))
                        : 0);
            worst.merge(segment.member().name() + measure, value, Math::max);
          }
        }
      }
    }
    for (StrengthFinding finding : found.strength()) {
      if (finding.measure() != StrengthMeasure.WALL) {
        double all = worst.getOrDefault(finding.member().name() + finding.measure(), Double.NaN);
        // Point loads only, so stresses peak where loads stand; rounding of two ways to add up.
        assertThat(finding.governing().value())
            .as("%s %s", finding.member().name(), finding.measure())
            .isBetween(all * (1 - 1e-8), all * (1 + 1e-8));
      }
    }
    for (ReactionFinding finding : found.reactions()) {
      if (finding.freedom() == Freedom.SHIFT_Z) {
        double extreme =
            cases.stream()
                .mapToDouble(c -> solution.result(c).reaction(finding.support().node()).force().z())
                .reduce(finding.greatest() ? Math::max : Math::min)
                .orElseThrow();
        assertThat(Math.abs(finding.value() - extreme)).isLessThan(1e-6);
      }
    }
  }

  private static Frame frame() {
    Node a = new Node("a", new Vector(0, 0, 0));
    Node b = new Node("b", new Vector(0, 0, 2500));
    Node c = new Node("c", new Vector(2200, 0, 2500));
    Node d = new Node("d", new Vector(3900, 900, 2500));
    Node e = new Node("e", new Vector(3900, 900, 0));
    List<Member> members =
        List.of(
            member("leg-1", a, b),
            member("beam-1", b, c),
            member("beam-2", c, d),
            member("leg-2", d, e));
    List<Support> supports =
        List.of(
            new Support(a, java.util.Collections.nCopies(6, Restraint.FIXED)),
            new Support(e, java.util.Collections.nCopies(6, Restraint.FIXED)));
    return new Frame(List.of(a, b, c, d, e), members, supports);
  }

  private static Member member(String name, Node from, Node to) {
    return new Member(
        name,
        MemberRole.OTHER,
        List.of(from, to),
        TUBE,
        ALLOY,
        0,
        MemberEnd.RIGID,
        MemberEnd.RIGID);
  }

  private static Actions actions(Frame frame, Random random) {
    List<UserCase> cases = new ArrayList<>();
    for (int i = 0; i < LOADS; i++) {
      Segment segment = frame.segments().get(random.nextInt(frame.segments().size()));
      Vector direction =
          new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
      SegmentLoad load =
          new SegmentLoad.Point(
              segment,
              LoadAxes.GLOBAL,
              direction,
              new LoadOrigin.Given("load"),
              200 + 1500 * random.nextDouble(),
              segment.length() * (0.05 + 0.9 * random.nextDouble()));
      cases.add(
          new UserCase(
              ActionCategory.IMPOSED, new LoadCase("load " + i, List.of(), List.of(load))));
    }
    CombinationTemplate template =
        new CombinationTemplate(
            "1.5Q",
            LimitState.STRENGTH,
            LeadingAction.FLOOR,
            Map.of(ActionCategory.IMPOSED, figure("Q", 1.5)),
            false,
            INVENTED);
    return ActionPlanner.plan(
        frame,
        List.of(),
        List.of(),
        cases,
        RULES,
        new CombinationSet("test", "test", List.of(template)));
  }
}
