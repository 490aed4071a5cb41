package spanledger.verification.check;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.LeadingAction;
import spanledger.action.RuleSet;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentEffect;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.ForceEnvelope;
import spanledger.envelope.ForceExtreme;
import spanledger.envelope.Influence;
import spanledger.envelope.ReactionFinding;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.quantity.Dimension;
import spanledger.resistance.ResistanceFactors;

/**
 * Influence lines and the worst places of one force, against tables and the three-moment equation.
 */
class InfluenceLinesTest {

  /** N. */
  private static final double FORCE = 1000;

  @TestFactory
  Stream<DynamicNode> cases() throws IOException {
    return CaseFile.tests(
        InfluenceLinesTest.class, "influence.json", 10, InfluenceLinesTest::values);
  }

  private static Map<String, Double> values(String kind, JsonNode given) {
    double span = given.required("span").asDouble();
    Frame frame = Simple.spans(given.required("spans").asInt(), span);
    return kind.equals("line")
        ? line(frame, span, given.required("loaded").asInt())
        : moving(frame, span);
  }

  /** Ordinates at tenths, thirds and sixths of the loaded span. */
  private static Map<String, Double> line(Frame frame, double span, int loaded) {
    FrameAnalysis analysis = new FrameAnalysis(frame);
    Segment first = segment(frame, "first", 0);
    Influence moment =
        Influence.ofForce(analysis, new Station(first, span), SegmentEffect.MOMENT_Y);
    Influence end = Influence.ofReaction(analysis, frame.supports().get(0), Freedom.SHIFT_Z);
    Influence inner = Influence.ofReaction(analysis, frame.supports().get(1), Freedom.SHIFT_Z);
    Map<String, Double> values = new HashMap<>();
    for (double part : new double[] {6, 10}) {
      for (int k = 1; k < part; k++) {
        double a = k / part;
        Segment on = loaded == 0 ? first : segment(frame, "rest", 0);
        // The second span begins with a stub of a thousandth of it.
        double x = loaded == 0 ? a * span : (a - 0.001) * span;
        values.put("M " + a, moment.ordinate(on, Vector.DOWN, x) / span);
        values.put("R0 " + a, end.ordinate(on, Vector.DOWN, x));
        values.put("R1 " + a, inner.ordinate(on, Vector.DOWN, x));
      }
    }
    return values;
  }

  private static Segment segment(Frame frame, String member, int order) {
    return frame.segments().stream()
        .filter(s -> s.member().name().equals(member) && s.order() == order)
        .findFirst()
        .orElseThrow();
  }

  private static Map<String, Double> moving(Frame frame, double span) {
    RuleSet rules = Simple.rules(Simple.figure(RuleSet.FLOOR_POINT, FORCE, Dimension.FORCE));
    Actions actions =
        ActionPlanner.plan(
            frame,
            List.of(),
            List.of(),
            List.of(),
            rules,
            Simple.combinations(LeadingAction.FLOOR, 0, 1, false));
    EnvelopeSearch search =
        new EnvelopeSearch(
            new FrameAnalysis(frame), actions, List.of(), ResistanceFactors.of(rules), 4);
    ForceExtreme sagging = extreme(search.forces(), "first", false);
    ForceExtreme hogging = extreme(search.forces(), "stub", true);
    ReactionFinding reaction =
        search.run().reactions().stream()
            .filter(
                r ->
                    r.greatest()
                        && r.freedom() == Freedom.SHIFT_Z
                        && r.support().node().name().equals("bearing-0"))
            .findFirst()
            .orElseThrow();
    return Map.of(
        "sagging", -sagging.governing().value() / (FORCE * span),
        "sagging at", sagging.governing().station().x() / span,
        "hogging", hogging.governing().value() / (FORCE * span),
        "load at", hogging.governing().instance().standing().orElseThrow().at() / span,
        "end reaction", reaction.value() / FORCE);
  }

  private static ForceExtreme extreme(
      List<ForceEnvelope> envelopes, String member, boolean greatest) {
    return envelopes.stream()
        .filter(e -> e.member().name().equals(member))
        .findFirst()
        .flatMap(e -> e.governing(SegmentEffect.MOMENT_Y, greatest))
        .orElseThrow();
  }
}
