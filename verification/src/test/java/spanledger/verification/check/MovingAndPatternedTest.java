package spanledger.verification.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.Chains;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.LoadTrain;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.Findings;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.quantity.Dimension;
import spanledger.resistance.ResistanceFactors;

/** Trains, patches and patterns against statics and handbooks, from their actions on. */
class MovingAndPatternedTest {

  /** N. */
  private static final double FORCE = 1000;

  /** N/mm². */
  private static final double PRESSURE = 0.004;

  /** Between the two beams that carry the floor, mm. */
  private static final double WIDTH = 1000;

  @TestFactory
  Stream<DynamicNode> cases() throws IOException {
    return CaseFile.tests(
        MovingAndPatternedTest.class, "moving.json", 15, MovingAndPatternedTest::values);
  }

  private static Map<String, Double> values(String kind, JsonNode given) {
    double span = given.required("span").asDouble();
    return switch (kind) {
      case "train" ->
          train(
              span, given.required("number").asInt(), span * given.required("spacing").asDouble());
      case "patch" -> patch(span, span * given.required("length").asDouble());
      case "pattern" -> pattern(given.required("spans").asInt(), span);
      default -> throw new IllegalArgumentException("Unknown kind " + kind);
    };
  }

  private static Map<String, Double> train(double span, int number, double spacing) {
    Frame frame = Simple.spans(1, span);
    LoadTrain train =
        new LoadTrain(
            "train",
            new Chains(frame).path(frame.members(), Vector.DOWN).orElseThrow(),
            number,
            spacing,
            Simple.figure("train", FORCE, Dimension.FORCE));
    return simpleSpan(frame, Simple.rules(), List.of(train), span);
  }

  private static Map<String, Double> patch(double span, double length) {
    RuleSet rules =
        Simple.rules(
            Simple.figure(RuleSet.FLOOR_POINT, FORCE, Dimension.FORCE),
            Simple.figure(RuleSet.FLOOR_POINT_PATCH, length, Dimension.LENGTH));
    return simpleSpan(Simple.spans(1, span), rules, List.of(), span);
  }

  private static Map<String, Double> simpleSpan(
      Frame frame, RuleSet rules, List<LoadTrain> trains, double span) {
    Actions actions =
        ActionPlanner.plan(
            frame,
            List.of(),
            List.of(),
            List.of(),
            trains,
            rules,
            Simple.combinations(LeadingAction.FLOOR, 0, 1, false));
    Findings found = search(frame, actions, rules);
    return Map.of(
        "moment", moment(found, "first") / (FORCE * span),
        "reaction", reaction(found, frame.supports().get(0), true) / FORCE);
  }

  /** Two beams side by side with a floor between them; each carries half of it. */
  private static Map<String, Double> pattern(int spans, double span) {
    List<Node> nodes = new ArrayList<>();
    List<Member> members = new ArrayList<>();
    List<Support> supports = new ArrayList<>();
    for (int beam = 0; beam < 2; beam++) {
      Frame line = Simple.spans(spans, span);
      Map<String, Node> moved = new java.util.HashMap<>();
      for (Node node : line.nodes()) {
        Node copy =
            new Node(node.name() + "-" + beam, new Vector(node.place().x(), beam * WIDTH, 0));
        moved.put(node.name(), copy);
        nodes.add(copy);
      }
      for (Member member : line.members()) {
        members.add(
            Simple.member(
                member.name() + "-" + beam,
                MemberRole.FLOOR,
                member.nodes().stream().map(n -> moved.get(n.name())).toArray(Node[]::new)));
      }
      line.supports()
          .forEach(
              s ->
                  supports.add(Simple.bearing(Objects.requireNonNull(moved.get(s.node().name())))));
    }
    Frame frame = new Frame(nodes, members, supports);
    List<Node> corners =
        List.of(
            new Node("c1", new Vector(0, 0, 0)),
            new Node("c2", new Vector(spans * span, 0, 0)),
            new Node("c3", new Vector(spans * span, WIDTH, 0)),
            new Node("c4", new Vector(0, WIDTH, 0)));
    RuleSet rules = Simple.rules(Simple.figure(RuleSet.FLOOR_AREA, PRESSURE, Dimension.STRESS));
    Actions actions =
        ActionPlanner.plan(
            frame,
            List.of(new Surface("deck", corners, members, 0)),
            List.of(),
            List.of(),
            rules,
            Simple.combinations(LeadingAction.FLOOR, 0, 1, false));
    assertThat(actions.combinations().get(0).options()).hasSize(spans);
    Findings found = search(frame, actions, rules);
    double line = PRESSURE * WIDTH / 2;
    return Map.of(
        "hogging", moment(found, "stub-0") / (line * span * span),
        "end reaction", reaction(found, supports.get(0), true) / (line * span),
        "least end reaction", reaction(found, supports.get(0), false) / (line * span),
        "second reaction", reaction(found, supports.get(1), true) / (line * span));
  }

  private static Findings search(Frame frame, Actions actions, RuleSet rules) {
    return new EnvelopeSearch(
            new FrameAnalysis(frame), actions, List.of(), ResistanceFactors.of(rules), 4)
        .run();
  }

  private static double moment(Findings found, String member) {
    return found.strength().stream()
        .filter(f -> f.measure() == StrengthMeasure.BENDING && f.member().name().equals(member))
        .mapToDouble(f -> f.governing().value() * Simple.STRENGTH * Simple.MODULUS)
        .max()
        .orElseThrow();
  }

  private static double reaction(Findings found, Support support, boolean greatest) {
    return found.reactions().stream()
        .filter(
            r ->
                r.support().node().equals(support.node())
                    && r.freedom() == Freedom.SHIFT_Z
                    && r.limitState() == LimitState.STRENGTH
                    && r.greatest() == greatest)
        .mapToDouble(r -> r.value())
        .findFirst()
        .orElseThrow();
  }
}
