package spanledger.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionCategory;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.Combination;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.LoadCase;
import spanledger.action.LoadPath;
import spanledger.action.MovingLoad;
import spanledger.action.Rail;
import spanledger.action.RailDirection;
import spanledger.action.RailKind;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.frame.Frame;
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

/**
 * The search against statics, and against a search that solves every place as a load case of its
 * own.
 */
class EnvelopeSearchTest {

  private static final Source INVENTED = Source.declared("invented for this test");
  private static final Alloy ALLOY =
      new Alloy(
          "test alloy",
          Set.of(ProductForm.values()[0]),
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
  private static final Section BEAM = new Section("beam", new RectangularHollow(100, 50, 3, 3));
  private static final Section POST = new Section("post", new RectangularHollow(50, 50, 3, 3));

  private static Figure figure(String id, double value, Dimension dimension) {
    return new Figure(id, id, "", value, dimension, INVENTED, "");
  }

  private static RuleSet rules(Figure... figures) {
    Map<String, Figure> all = new java.util.TreeMap<>();
    Stream.concat(
            Stream.of(figures), Stream.of(figure(RuleSet.RESISTANCE_DIVISOR, 1.1, Dimension.NONE)))
        .forEach(f -> all.put(f.id(), f));
    return new RuleSet(
        "test",
        "test",
        all,
        List.of(RailDirection.OUTWARD, RailDirection.INWARD, RailDirection.DOWNWARD));
  }

  private static CombinationTemplate template(
      LimitState state, LeadingAction leading, double permanent, double imposed) {
    return new CombinationTemplate(
        state.words() + " " + leading,
        state,
        leading,
        Map.of(
            ActionCategory.PERMANENT, figure("G", permanent, Dimension.NONE),
            ActionCategory.IMPOSED,
                figure("Q", leading == LeadingAction.FLOOR ? imposed : 0, Dimension.NONE),
            ActionCategory.GUARDRAIL, figure("R", imposed, Dimension.NONE)),
        false,
        INVENTED);
  }

  private static final CombinationSet COMBINATIONS =
      new CombinationSet(
          "test",
          "test",
          List.of(
              template(LimitState.STRENGTH, LeadingAction.FLOOR, 1.2, 1.5),
              template(LimitState.STRENGTH, LeadingAction.GUARDRAIL, 0.9, 1.5),
              template(LimitState.SERVICEABILITY, LeadingAction.FLOOR, 1, 1),
              template(LimitState.SERVICEABILITY, LeadingAction.GUARDRAIL, 1, 1)));

  private static Support fixed(Node node) {
    return new Support(node, java.util.Collections.nCopies(6, Restraint.FIXED));
  }

  /**
   * Given a beam on simple bearings with a point load anywhere, expected M = 1.5 PL/4 + 1.2 qL²/8
   * and δ = PL³/48EI + ...
   */
  @Test
  void pointLoadOnSimpleBeamGovernsAtMidspan() {
    Node a = new Node("a", Vector.ZERO);
    Node b = new Node("b", new Vector(3000, 0, 0));
    Member beam =
        new Member(
            "beam",
            MemberRole.FLOOR,
            List.of(a, b),
            BEAM,
            ALLOY,
            0,
            MemberEnd.PINNED,
            MemberEnd.PINNED);
    Frame frame = new Frame(List.of(a, b), List.of(beam), List.of(fixed(a), fixed(b)));
    RuleSet rules =
        rules(
            figure(RuleSet.FLOOR_POINT, 1100, Dimension.FORCE),
            figure(RuleSet.FLOOR_AREA, 0, Dimension.STRESS));
    Actions actions =
        ActionPlanner.plan(frame, List.of(), List.of(), List.of(), rules, COMBINATIONS);
    Findings found =
        new EnvelopeSearch(
                new FrameAnalysis(frame), actions, List.of(), ResistanceFactors.of(rules), 4)
            .run();

    double weight = BEAM.properties().area() * 2.7e-6 * 9.80665;
    double moment = 1.5 * 1100 * 3000 / 4 + 1.2 * weight * 3000 * 3000 / 8;
    Governing bending =
        found.strength().stream()
            .filter(f -> f.measure() == StrengthMeasure.BENDING)
            .findFirst()
            .orElseThrow()
            .governing();
    assertThat(bending.value())
        .as("bending utilisation, statics")
        .isCloseTo(moment / BEAM.properties().elasticModulusY() / (160 / 1.1), within(1e-9));
    assertThat(bending.instance().standing().orElseThrow().at()).isEqualTo(1500);

    double ei = 70000 * BEAM.properties().secondMomentY();
    double gas = 27000 * BEAM.properties().shearAreaZ();
    double sag =
        1100 * Math.pow(3000, 3) / 48 / ei
            + 1100 * 3000 / 4 / gas
            + 5 * weight * Math.pow(3000, 4) / 384 / ei
            + weight * 3000 * 3000 / 8 / gas;
    assertThat(found.deflections().get(0).governing().value())
        .as("sag, closed form with shear")
        .isCloseTo(sag, within(1e-9 * sag));
  }

  /**
   * A small platform with continuous edges and a cantilevered rail: the search must not miss what a
   * dense search finds.
   */
  @Test
  void findsWhatADenseSearchFinds() {
    Platform platform = new Platform();
    Findings found = platform.search(4);
    for (StrengthFinding finding : found.strength()) {
      if (finding.scope() == StrengthFinding.Scope.ALL
          && finding.measure() != StrengthMeasure.WALL) {
        double dense = platform.dense(finding.member(), finding.measure());
        assertThat(finding.governing().value())
            .as(finding.member().name() + " " + finding.measure())
            // A place is met to 0.05 mm, which costs (0.05/500)² at a flat peak.
            .isGreaterThanOrEqualTo(dense * (1 - 1e-8))
            // The dense search looks at every 25 mm only, so it may find a little less.
            .isLessThanOrEqualTo(dense * 1.01);
      }
    }
  }

  /**
   * Two edge beams of two spans on four corner legs and two middle legs, three bearers, one rail on
   * two posts.
   */
  private static final class Platform {
    final Frame frame;
    final Actions actions;
    final RuleSet rules =
        rules(
            figure(RuleSet.FLOOR_POINT, 1100, Dimension.FORCE),
            figure(RuleSet.FLOOR_AREA, 0.0025, Dimension.STRESS),
            figure(RuleSet.GUARDRAIL_LINE, 0.35, Dimension.LINE_LOAD),
            figure(RuleSet.GUARDRAIL_POINT, 600, Dimension.FORCE));
    final List<Rail> rails;

    Platform() {
      Node[][] floor = new Node[2][3];
      Node[][] feet = new Node[2][3];
      List<Node> nodes = new java.util.ArrayList<>();
      for (int y = 0; y < 2; y++) {
        for (int x = 0; x < 3; x++) {
          feet[y][x] = new Node("foot" + y + x, new Vector(1300 * x, 1000 * y, 0));
          floor[y][x] = new Node("floor" + y + x, new Vector(1300 * x, 1000 * y, 1500));
          nodes.add(feet[y][x]);
          nodes.add(floor[y][x]);
        }
      }
      Node top0 = new Node("top0", new Vector(0, 0, 2500));
      Node top1 = new Node("top1", new Vector(2600, 0, 2500));
      nodes.addAll(List.of(top0, top1));
      List<Member> members = new java.util.ArrayList<>();
      for (int y = 0; y < 2; y++) {
        members.add(member("edge" + y, MemberRole.FLOOR, BEAM, MemberEnd.RIGID, floor[y]));
        for (int x = 0; x < 3; x++) {
          members.add(
              member(
                  "leg" + y + x, MemberRole.LEG, POST, MemberEnd.RIGID, feet[y][x], floor[y][x]));
        }
      }
      for (int x = 0; x < 3; x++) {
        members.add(
            member(
                "bearer" + x, MemberRole.FLOOR, BEAM, MemberEnd.PINNED, floor[0][x], floor[1][x]));
      }
      Member post0 =
          member("post0", MemberRole.RAIL_POST, POST, MemberEnd.RIGID, floor[0][0], top0);
      Member post1 =
          member("post1", MemberRole.RAIL_POST, POST, MemberEnd.RIGID, floor[0][2], top1);
      Member rail = member("rail", MemberRole.RAIL, POST, MemberEnd.PINNED, top0, top1);
      members.addAll(List.of(post0, post1, rail));
      List<Support> supports = new java.util.ArrayList<>();
      for (Node[] row : feet) {
        for (Node foot : row) {
          supports.add(fixed(foot));
        }
      }
      frame = new Frame(nodes, members, supports);
      rails =
          List.of(
              new Rail(
                  "rail",
                  RailKind.TOP,
                  List.of(rail),
                  List.of(post0, post1),
                  new Vector(0, -1, 0)));
      Surface surface =
          new Surface(
              "floor",
              List.of(floor[0][0], floor[0][2], floor[1][2], floor[1][0]),
              members.stream().filter(m -> m.name().startsWith("bearer")).toList(),
              0.0001);
      actions = ActionPlanner.plan(frame, List.of(surface), rails, List.of(), rules, COMBINATIONS);
    }

    private static Member member(
        String name, MemberRole role, Section section, MemberEnd end, Node... nodes) {
      return new Member(name, role, List.of(nodes), section, ALLOY, 0, end, end);
    }

    Findings search(int places) {
      return new EnvelopeSearch(
              new FrameAnalysis(frame), actions, rails, ResistanceFactors.of(rules), places)
          .run();
    }

    private final java.util.Map<String, double[]> dense = new java.util.HashMap<>();

    /**
     * Every place of every moving load at 25 mm as a load case of its own, every cut at 1/40 of the
     * segment.
     */
    double dense(Member member, StrengthMeasure measure) {
      if (dense.isEmpty()) {
        runDense();
      }
      return dense.get(member.name())[measure.ordinal()];
    }

    private void runDense() {
      FrameAnalysis analysis = new FrameAnalysis(frame);
      for (Combination combination : actions.combinations()) {
        if (combination.template().limitState() != LimitState.STRENGTH) {
          continue;
        }
        if (combination.moving().isEmpty()) {
          evaluate(analysis, combination, Optional.empty());
          continue;
        }
        MovingLoad load = combination.moving().get().load();
        for (LoadPath path : load.paths()) {
          for (double at = load.first(path); at <= load.last(path); at += 25) {
            evaluate(
                analysis,
                combination,
                Optional.of(new LoadCase("placed", List.of(), load.placed(path, at))));
          }
        }
      }
    }

    /** Every pattern of the free parts. */
    private void evaluate(
        FrameAnalysis analysis, Combination combination, Optional<LoadCase> placed) {
      for (int bits = 0; bits < 1 << combination.options().size(); bits++) {
        List<Combination.Term> terms = new java.util.ArrayList<>(combination.terms());
        for (int i = 0; i < combination.options().size(); i++) {
          if ((bits >> i & 1) == 1) {
            terms.addAll(combination.options().get(i).terms());
          }
        }
        evaluate(analysis, combination, terms, placed);
      }
    }

    private void evaluate(
        FrameAnalysis analysis,
        Combination combination,
        List<Combination.Term> terms,
        Optional<LoadCase> placed) {
      List<LoadCase> cases =
          new java.util.ArrayList<>(terms.stream().map(Combination.Term::loadCase).toList());
      List<Double> factors =
          new java.util.ArrayList<>(terms.stream().map(combination::factor).toList());
      placed.ifPresent(
          p -> {
            cases.add(p);
            factors.add(combination.factor(combination.moving().orElseThrow()));
          });
      double[] weights = factors.stream().mapToDouble(Double::doubleValue).toArray();
      FrameSolution solution = analysis.solve(cases);
      double[] forces = new double[6];
      for (Member member : frame.members()) {
        SectionCheck check = new SectionCheck(member, ResistanceFactors.of(rules));
        double[] worst = dense.computeIfAbsent(member.name(), n -> new double[4]);
        for (Segment segment : frame.segmentsOf(member)) {
          SegmentResponse sum =
              SegmentResponse.sum(
                  cases.stream().map(c -> solution.response(segment, c)).toList(), weights);
          for (int i = 0; i <= 40; i++) {
            sum.forces(segment.length() * i / 40, Side.BEFORE, forces);
            check.evaluate(forces);
            for (StrengthMeasure measure : StrengthMeasure.values()) {
              worst[measure.ordinal()] = Math.max(worst[measure.ordinal()], check.value(measure));
            }
          }
        }
      }
    }
  }
}
