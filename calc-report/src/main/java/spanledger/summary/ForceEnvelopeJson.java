package spanledger.summary;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import spanledger.envelope.ForceEnvelope;
import spanledger.envelope.ForceExtreme;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;

/** The internal forces of all members with what causes them; causes are listed once. */
final class ForceEnvelopeJson {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Function<Instance, ObjectNode> words;
  private final Map<String, Integer> causes = new LinkedHashMap<>();
  private final ArrayNode loadings = NODES.arrayNode();

  private ForceEnvelopeJson(Function<Instance, ObjectNode> words) {
    this.words = words;
  }

  /**
   * The envelopes.
   *
   * @param words how a combination with its pattern and the place of its moving load is written
   */
  static ObjectNode of(List<ForceEnvelope> envelopes, Function<Instance, ObjectNode> words) {
    ForceEnvelopeJson json = new ForceEnvelopeJson(words);
    ObjectNode node = NODES.objectNode();
    node.set("loadings", json.loadings);
    ArrayNode members = node.putArray("members");
    envelopes.forEach(envelope -> members.add(json.member(envelope)));
    return node;
  }

  private ObjectNode member(ForceEnvelope envelope) {
    ObjectNode node = NODES.objectNode();
    node.put("member", envelope.member().name());
    ObjectNode governing = node.putObject("governing");
    for (ForceExtreme extreme : envelope.governing()) {
      Governing found = extreme.governing();
      ObjectNode one =
          governing.withObject("/" + extreme.effect().symbol()).putObject(side(extreme));
      one.put("value", found.value());
      one.put("segment", found.station().segment().name());
      one.put("x", found.station().x());
      one.put("loading", loading(found.instance()));
    }
    ArrayNode ends = node.putArray("ends");
    Map<String, ObjectNode> byCut = new LinkedHashMap<>();
    for (ForceExtreme extreme : envelope.atEnds()) {
      Governing found = extreme.governing();
      String key = found.station().segment().index() + "|" + found.station().x();
      ObjectNode cut = byCut.get(key);
      if (cut == null) {
        cut = ends.addObject();
        cut.put("segment", found.station().segment().name());
        cut.put("x", found.station().x());
        byCut.put(key, cut);
      }
      cut.withObject("/" + side(extreme))
          .putArray(extreme.effect().symbol())
          .add(found.value())
          .add(loading(found.instance()));
    }
    return node;
  }

  private int loading(Instance instance) {
    Integer known = causes.get(instance.words());
    if (known == null) {
      known = causes.size();
      causes.put(instance.words(), known);
      loadings.add(words.apply(instance));
    }
    return known;
  }

  private static String side(ForceExtreme extreme) {
    return extreme.greatest() ? "greatest" : "least";
  }
}
