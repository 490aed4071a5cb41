package spanledger.verification.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.CombinationSet;
import spanledger.action.LeadingAction;
import spanledger.action.LoadCase;
import spanledger.action.Rail;
import spanledger.action.RailKind;
import spanledger.action.RuleSet;
import spanledger.action.SegmentLoad;
import spanledger.action.Surface;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.quantity.Dimension;
import spanledger.resistance.ResistanceFactors;

/** Posts of guardrails, and level forces that stand for a structure out of plumb, by statics. */
class GuardrailAndSwayTest {

  private static final double HEIGHT = 1000;
  private static final double SPACING = 1500;

  /** Two posts fixed at the floor with a rail on a bolt at each end, free to turn there. */
  private static double momentAtBase(RuleSet rules) {
    Node foot0 = new Node("foot0", Vector.ZERO);
    Node foot1 = new Node("foot1", new Vector(SPACING, 0, 0));
    Node top0 = new Node("top0", new Vector(0, 0, HEIGHT));
    Node top1 = new Node("top1", new Vector(SPACING, 0, HEIGHT));
    Member post0 = Simple.member("post0", MemberRole.RAIL_POST, foot0, top0);
    Member post1 = Simple.member("post1", MemberRole.RAIL_POST, foot1, top1);
    Member rail = Simple.bolted("rail", MemberRole.RAIL, top0, top1);
    Frame frame =
        new Frame(
            List.of(foot0, foot1, top0, top1),
            List.of(post0, post1, rail),
            List.of(Simple.fixed(foot0), Simple.fixed(foot1)));
    List<Rail> rails =
        List.of(
            new Rail(
                "rail", RailKind.TOP, List.of(rail), List.of(post0, post1), new Vector(0, -1, 0)));
    CombinationSet combinations = Simple.combinations(LeadingAction.GUARDRAIL, 0, 1.5, false);
    Actions actions = ActionPlanner.plan(frame, List.of(), rails, List.of(), rules, combinations);
    StrengthFinding base =
        new EnvelopeSearch(new FrameAnalysis(frame), actions, rails, ResistanceFactors.of(rules), 4)
            .run().strength().stream()
                .filter(f -> f.scope() == StrengthFinding.Scope.POST_BASE)
                .filter(
                    f ->
                        f.measure() == StrengthMeasure.BENDING
                            || f.measure() == StrengthMeasure.COMBINED)
                .filter(f -> f.member().name().equals("post0"))
                .findFirst()
                .orElseThrow();
    assertThat(base.governing().station().x()).as("cut at the base").isEqualTo(0);
    return base.governing().value() * Simple.STRENGTH * Simple.MODULUS;
  }

  /**
   * Given P = 600 N outward at any place of the rail, 1000 mm up, factor 1.5; expected M = 1.5 P h:
   * worst at the post, as a bolted rail hands nothing on from there. Source: statics. Tolerance:
   * rounding, and the shear stress over a shear area of 1e12 mm² in the combined stress.
   */
  @Test
  void postUnderPointLoadBearsForceTimesHeight() {
    RuleSet rules = Simple.rules(Simple.figure(RuleSet.GUARDRAIL_POINT, 600, Dimension.FORCE));

    assertThat(momentAtBase(rules)).isCloseTo(1.5 * 600 * HEIGHT, within(1e-3));
  }

  /**
   * Given w = 0.35 N/mm outward along the rail, posts 1500 mm apart, factor 1.5; expected M = 1.5 w
   * L/2 h for a post at the end of the rail. Source: statics.
   */
  @Test
  void postUnderLineLoadBearsHalfTheRail() {
    RuleSet rules = Simple.rules(Simple.figure(RuleSet.GUARDRAIL_LINE, 0.35, Dimension.LINE_LOAD));

    assertThat(momentAtBase(rules)).isCloseTo(1.5 * 0.35 * SPACING / 2 * HEIGHT, within(1e-3));
  }

  /**
   * Given a share of 1.5 % (AS/NZS 1170.0:2002, 6.2.2, structures up to 15 m, from memory, confirm
   * against the standard); expected level force = 0.015 times the vertical force of each case,
   * along X and along Y. Vertical: 2.5 kN/m² on 2 m by 1 m = 5000 N, finishes 0.1 kN/m² = 200 N,
   * weight A·L·ρ·g.
   */
  @Test
  void notionalForcesAreAShareOfTheVerticalForces() {
    List<Node> feet = new ArrayList<>();
    List<Node> heads = new ArrayList<>();
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Vector place = new Vector(2000 * (i % 2), 1000 * (i / 2), 0);
      feet.add(new Node("foot" + i, place));
      heads.add(new Node("head" + i, place.plus(new Vector(0, 0, 1800))));
      members.add(Simple.member("leg" + i, MemberRole.LEG, feet.get(i), heads.get(i)));
    }
    Member front = Simple.member("front", MemberRole.FLOOR, heads.get(0), heads.get(1));
    Member back = Simple.member("back", MemberRole.FLOOR, heads.get(2), heads.get(3));
    members.addAll(List.of(front, back));
    List<Node> nodes = new ArrayList<>(feet);
    nodes.addAll(heads);
    Frame frame = new Frame(nodes, members, feet.stream().map(Simple::fixed).toList());
    Surface floor =
        new Surface(
            "floor",
            List.of(heads.get(0), heads.get(1), heads.get(3), heads.get(2)),
            List.of(front, back),
            0.0001);
    RuleSet rules =
        Simple.rules(
            Simple.figure(RuleSet.FLOOR_AREA, 0.0025, Dimension.STRESS),
            Simple.figure(RuleSet.NOTIONAL_SWAY, 0.015, Dimension.NONE));
    Actions actions =
        ActionPlanner.plan(
            frame,
            List.of(floor),
            List.of(),
            List.of(),
            rules,
            Simple.combinations(LeadingAction.FLOOR, 1, 1, true));

    double weight = 1000 * (2 * 2000 + 4 * 1800) * 2.7e-6 * 9.80665;
    for (String axis : List.of("X", "Y")) {
      double level = 0;
      for (CategorisedCase one : actions.cases()) {
        if (one.loads().name().startsWith("sway " + axis)) {
          Vector total = total(one.loads());
          level += axis.equals("X") ? total.x() : total.y();
          assertThat(total.z()).as(one.loads().name()).isZero();
        }
      }
      // Relative 1e-12: rounding of sums.
      assertThat(level).as("along " + axis).isCloseTo(0.015 * (5000 + 200 + weight), within(1e-9));
    }
    assertThat(actions.combinations().stream().filter(c -> c.name().contains("sway")).toList())
        .as("both ways along both axes, in both limit states")
        .hasSize(8);
  }

  private static Vector total(LoadCase loads) {
    Vector total = Vector.ZERO;
    for (SegmentLoad load : loads.segmentLoads()) {
      double size =
          load instanceof SegmentLoad.Distributed d
              ? (d.intensityFrom() + d.intensityTo()) / 2 * (d.to() - d.from())
              : ((SegmentLoad.Point) load).force();
      Vector direction = load.direction();
      total =
          total.plus(new Vector(size * direction.x(), size * direction.y(), size * direction.z()));
    }
    for (var load : loads.nodalLoads()) {
      total = total.plus(load.force());
    }
    return total;
  }
}
