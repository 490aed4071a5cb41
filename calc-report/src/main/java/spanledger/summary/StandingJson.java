package spanledger.summary;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import spanledger.overturning.SlidingCase;
import spanledger.overturning.StandingResult;
import spanledger.overturning.TippingCase;
import spanledger.overturning.TippingEdge;
import spanledger.overturning.VariableLoad;
import spanledger.robustness.BraceLoss;
import spanledger.robustness.FrameState;
import spanledger.verdict.WholeStructure;

/** The structure as a whole for other programs, documented in docs/results-file.md. */
final class StandingJson {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private StandingJson() {}

  static ObjectNode of(WholeStructure whole) {
    ObjectNode node = NODES.objectNode();
    StandingResult standing = whole.standing();
    node.put("weight", standing.permanent().weight());
    ArrayNode feet = node.putArray("feet");
    standing.feet().forEach(foot -> feet.add(foot.name()));
    ArrayNode lines = node.putArray("lines");
    for (TippingEdge edge : standing.edges()) {
      ObjectNode line = lines.addObject();
      line.put("from", edge.first().name());
      line.put("to", edge.second().name());
      ArrayNode outward = line.putArray("outward");
      outward.add(edge.outward().x());
      outward.add(edge.outward().y());
      ArrayNode rules = line.putArray("rules");
      standing.tipping().stream()
          .filter(one -> one.edge() == edge)
          .forEach(one -> rules.add(tipping(one)));
      ballast(line, standing.ballast(edge));
    }
    ArrayNode sliding = node.putArray("sliding");
    standing.sliding().forEach(one -> sliding.add(sliding(one)));
    standing.ballastAgainstSliding().ifPresent(mass -> ballast(node, "ballastForSliding", mass));
    ballast(node, "ballastForAll", standing.ballast());
    ArrayNode places = node.putArray("ballastPlaces");
    standing.ballastPlaceNames().forEach(places::add);
    whole
        .robustness()
        .ifPresent(
            result -> {
              ObjectNode braces = node.putObject("bracesLeftOut");
              braces.put("state", result.state());
              braces.put("imposedShare", result.share());
              braces.set("whole", state(result.whole()));
              ArrayNode losses = braces.putArray("without");
              result.losses().forEach(loss -> losses.add(loss(loss)));
            });
    return node;
  }

  private static ObjectNode tipping(TippingCase one) {
    ObjectNode node = NODES.objectNode();
    node.put("rule", one.rule().name());
    node.put("leading", one.leading());
    node.put("stabilising", one.stabilising());
    node.put("destabilising", one.destabilising());
    if (one.destabilising() > 0) {
      node.put("factor", one.factor());
    }
    node.set("variable", names(one.variable()));
    return node;
  }

  private static ObjectNode sliding(SlidingCase one) {
    ObjectNode node = NODES.objectNode();
    node.put("rule", one.rule().name());
    node.put("leading", one.leading());
    node.put("along", one.along());
    node.put("onto", one.onto());
    node.put("friction", one.friction());
    return node;
  }

  private static ArrayNode names(List<VariableLoad> loads) {
    ArrayNode names = NODES.arrayNode();
    loads.forEach(load -> names.add(load.acting().name()));
    return names;
  }

  private static void ballast(ObjectNode node, double mass) {
    ballast(node, "ballast", mass);
  }

  /** A mass that no place makes enough is left out. */
  private static void ballast(ObjectNode node, String key, double mass) {
    if (mass >= 0) {
      node.put(key, mass);
    }
  }

  private static ObjectNode loss(BraceLoss loss) {
    ObjectNode node = state(loss.without());
    node.put("member", loss.member().name());
    ArrayNode alike = node.putArray("alike");
    loss.alike().forEach(alike::add);
    return node;
  }

  private static ObjectNode state(FrameState state) {
    ObjectNode node = NODES.objectNode();
    node.put("criticalFactor", state.criticalFactor());
    if (!state.mode().isEmpty()) {
      node.put("mode", state.mode());
    }
    if (!Double.isNaN(state.use())) {
      node.put("movement", state.movement());
      node.put("stressUtilisation", state.use());
      node.put("mostStressed", state.used());
    }
    return node;
  }
}
