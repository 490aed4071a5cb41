package spanledger.verification.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionCategory;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.RuleSet;
import spanledger.action.SwayScope;
import spanledger.action.UserCase;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentEffect;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.ForceEnvelope;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.ResistanceFactors;

/** Notional sway beside wind and beside a load that moves, if it is asked for; by statics. */
class SwayScopeTest {

  private static final Source INVENTED = Source.declared("invented for this test");
  private static final double HEIGHT = 2000;
  private static final double SPAN = 1000;
  private static final double FRACTION = 0.015;
  private static final RuleSet RULES =
      Simple.rules(
          Simple.figure(RuleSet.NOTIONAL_SWAY, FRACTION, Dimension.NONE),
          Simple.figure(RuleSet.FLOOR_POINT, 1100, Dimension.FORCE));

  private static CombinationSet led(
      LeadingAction leading, ActionCategory category, LimitState state) {
    return new CombinationSet(
        "case",
        "case",
        List.of(
            new CombinationTemplate(
                "case",
                state,
                leading,
                Map.of(
                    ActionCategory.PERMANENT,
                    Simple.figure("G", 1.2, Dimension.NONE),
                    category,
                    Simple.figure("Q", 1.5, Dimension.NONE)),
                false,
                INVENTED)));
  }

  /** Permanent load of 1000 N and wind of 300 N at the top of a post that stands free. */
  private static Actions onPost(Frame frame, SwayScope scope) {
    Node top = frame.nodes().get(1);
    return ActionPlanner.plan(
        frame,
        List.of(),
        List.of(),
        List.of(
            user(ActionCategory.PERMANENT, "machine", top, new Vector(0, 0, -1000)),
            user(ActionCategory.WIND, "wind", top, new Vector(300, 0, 0))),
        List.of(),
        RULES,
        led(LeadingAction.WIND, ActionCategory.WIND, LimitState.STRENGTH),
        scope);
  }

  private static UserCase user(ActionCategory category, String name, Node node, Vector force) {
    return new UserCase(
        category,
        new LoadCase(name, List.of(new NodalLoad(node, force, Vector.ZERO, name)), List.of()));
  }

  private static Frame post() {
    Node foot = new Node("foot", Vector.ZERO);
    Node top = new Node("top", new Vector(0, 0, HEIGHT));
    return new Frame(
        List.of(foot, top),
        List.of(Simple.member("post", MemberRole.LEG, foot, top)),
        List.of(Simple.fixed(foot)));
  }

  /**
   * Expected at the foot: (1.5 · 300 + 1.2 · 0.015 · 1000) · 2000, and own weight at mid-height.
   */
  @Test
  void windActsTogetherWithSway() {
    Frame frame = post();
    double weight = 1000 * 2.7e-6 * 9.80665 * HEIGHT;
    double wind = 1.5 * 300 * HEIGHT;
    double sway = 1.2 * FRACTION * (1000 * HEIGHT + weight * HEIGHT / 2);

    assertThat(atFoot(frame, onPost(frame, SwayScope.VERTICAL))).isCloseTo(wind, within(1e-6));
    // N·mm: rounding.
    assertThat(atFoot(frame, onPost(frame, SwayScope.EVERY))).isCloseTo(wind + sway, within(1e-3));
  }

  private static double atFoot(Frame frame, Actions actions) {
    double greatest = 0;
    for (ForceEnvelope envelope :
        new EnvelopeSearch(
                new FrameAnalysis(frame), actions, List.of(), ResistanceFactors.of(RULES), 4)
            .forces()) {
      for (SegmentEffect effect : List.of(SegmentEffect.MOMENT_Y, SegmentEffect.MOMENT_Z)) {
        for (boolean sign : new boolean[] {true, false}) {
          double value = envelope.governing(effect, sign).orElseThrow().governing().value();
          greatest = Math.max(greatest, Math.abs(value));
        }
      }
    }
    return greatest;
  }

  /**
   * A force of 1100 N that moves along an arm of 1000 mm on a post: expected torque in the post
   * from sway across the arm, 1.5 · 0.015 · 1100 · 1000, and 1.2 times that of the arm's weight.
   */
  @Test
  void whatMovesBringsItsSwayAlong() {
    Node foot = new Node("foot", Vector.ZERO);
    Node top = new Node("top", new Vector(0, 0, HEIGHT));
    Node end = new Node("end", new Vector(SPAN, 0, HEIGHT));
    Member post = Simple.member("post", MemberRole.LEG, foot, top);
    Frame frame =
        new Frame(
            List.of(foot, top, end),
            List.of(post, Simple.member("arm", MemberRole.FLOOR, top, end)),
            List.of(Simple.fixed(foot)));
    double weight = 1000 * 2.7e-6 * 9.80665 * SPAN;
    double torque = FRACTION * (1.5 * 1100 * SPAN + 1.2 * weight * SPAN / 2);

    assertThat(torqueOfPost(frame, SwayScope.VERTICAL)).isCloseTo(0, within(1e-6));
    // The force stands 1e-6 mm beside the end at most.
    assertThat(torqueOfPost(frame, SwayScope.EVERY)).isCloseTo(torque, within(1e-3));
  }

  private static double torqueOfPost(Frame frame, SwayScope scope) {
    return new EnvelopeSearch(
            new FrameAnalysis(frame),
            onArm(frame, scope, LimitState.STRENGTH),
            List.of(),
            ResistanceFactors.of(RULES),
            4)
        .forces().stream()
            .filter(e -> e.member().name().equals("post"))
            .flatMap(e -> e.governing(SegmentEffect.TORQUE, true).stream())
            .mapToDouble(e -> Math.abs(e.governing().value()))
            .max()
            .orElseThrow();
  }

  private static Actions onArm(Frame frame, SwayScope scope, LimitState state) {
    return ActionPlanner.plan(
        frame,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        RULES,
        led(LeadingAction.FLOOR, ActionCategory.IMPOSED, state),
        scope);
  }

  /** Imperfections are a matter of strength and stability, not of serviceability. */
  @Test
  void serviceabilityIsLeftAsItIs() {
    Frame frame = Simple.spans(1, SPAN);
    assertThat(onArm(frame, SwayScope.EVERY, LimitState.SERVICEABILITY).combinations())
        .hasSameSizeAs(onArm(frame, SwayScope.VERTICAL, LimitState.SERVICEABILITY).combinations());
    assertThat(onArm(frame, SwayScope.EVERY, LimitState.STRENGTH).combinations()).hasSize(4);
  }
}
