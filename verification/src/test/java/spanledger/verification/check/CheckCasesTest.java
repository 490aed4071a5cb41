package spanledger.verification.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.CombinationSet;
import spanledger.action.DeckShares;
import spanledger.action.LeadingAction;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.Governing;
import spanledger.envelope.Standing;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.Tables;
import spanledger.quantity.Dimension;
import spanledger.resistance.ResistanceFactors;
import spanledger.verdict.Assessor;
import spanledger.verdict.CheckGroup;

/** Runs the cases of the data file from their actions to their results. */
class CheckCasesTest {

  @TestFactory
  Stream<DynamicNode> cases() throws IOException {
    return CaseFile.tests(CheckCasesTest.class, "cases.json", 10, CheckCasesTest::values);
  }

  private static Map<String, Double> values(String kind, JsonNode given) {
    return switch (kind) {
      case "movingLoad" -> movingLoad(given);
      case "deck" -> deck(given);
      case "limit" -> limit(given);
      default -> throw new IllegalArgumentException("Unknown kind " + kind);
    };
  }

  /** The moving load alone: permanent loads have the factor 0. */
  private static Map<String, Double> movingLoad(JsonNode given) {
    double span = given.required("span").asDouble();
    double force = given.required("force").asDouble();
    Frame frame = Simple.spans(given.required("spans").asInt(), span);
    RuleSet rules = Simple.rules(Simple.figure(RuleSet.FLOOR_POINT, force, Dimension.FORCE));
    CombinationSet combinations = Simple.combinations(LeadingAction.FLOOR, 0, 1, false);
    Actions actions =
        ActionPlanner.plan(frame, List.of(), List.of(), List.of(), rules, combinations);
    List<StrengthFinding> found =
        new EnvelopeSearch(
                new FrameAnalysis(frame), actions, List.of(), ResistanceFactors.of(rules), 4)
            .run()
            .strength();
    Map<String, Double> values = new TreeMap<>();
    for (StrengthFinding finding : found) {
      if (finding.measure() == StrengthMeasure.BENDING
          && finding.scope() == StrengthFinding.Scope.ALL) {
        Governing governing = finding.governing();
        double moment = governing.value() * Simple.STRENGTH * Simple.MODULUS;
        String what =
            Map.of("first", "sagging", "stub", "hogging")
                .getOrDefault(finding.member().name(), "other");
        values.put(what, moment / (force * span));
        values.put(what + " stands at", fromOuterEnd(governing, span));
      }
    }
    return values;
  }

  /** Where the load stands in its span, from the bearing further from the first inner one. */
  private static double fromOuterEnd(Governing governing, double span) {
    Standing standing = governing.instance().standing().orElseThrow();
    double x = standing.path().lanes().get(0).segment().from().x() + standing.at();
    return x <= span ? x / span : 2 - x / span;
  }

  private static Map<String, Double> deck(JsonNode given) {
    List<Node> nodes = new ArrayList<>();
    List<Member> bearers = new ArrayList<>();
    for (JsonNode place : given.required("bearers")) {
      double y = place.asDouble();
      Node near = new Node("near-" + y, new Vector(0, y, 0));
      Node far = new Node("far-" + y, new Vector(2000, y, 0));
      nodes.addAll(List.of(near, far));
      bearers.add(Simple.member("bearer-" + bearers.size(), MemberRole.FLOOR, near, far));
    }
    double from = given.required("from").asDouble();
    double to = given.required("to").asDouble();
    List<Node> corners =
        List.of(
            new Node("c1", new Vector(0, from, 0)),
            new Node("c2", new Vector(2000, from, 0)),
            new Node("c3", new Vector(2000, to, 0)),
            new Node("c4", new Vector(0, to, 0)));
    Frame frame = new Frame(nodes, bearers, nodes.stream().map(Simple::fixed).toList());
    Map<String, Double> values = new TreeMap<>();
    for (DeckShares.Share share : DeckShares.of(new Surface("deck", corners, bearers, 0), frame)) {
      assertThat(share.to() - share.from()).isEqualTo(2000);
      values.put("width " + (bearers.indexOf(share.segment().member()) + 1), share.width());
    }
    return values;
  }

  private static Map<String, Double> limit(JsonNode given) {
    RuleSet rules =
        Objects.requireNonNull(Tables.shipped().rules().get(given.required("rules").asText()));
    Frame frame = Simple.spans(1, given.required("span").asDouble());
    CombinationSet combinations = Simple.combinations(LeadingAction.FLOOR, 1, 1, false);
    Actions actions =
        ActionPlanner.plan(frame, List.of(), List.of(), List.of(), rules, combinations);
    return Map.of(
        "limit",
        new Assessor(rules, List.of(), 4)
            .assess(new FrameAnalysis(frame), actions, combinations).verdicts().stream()
                .filter(v -> v.group() == CheckGroup.MEMBER_DEFLECTION)
                .findFirst()
                .orElseThrow()
                .capacity());
  }
}
