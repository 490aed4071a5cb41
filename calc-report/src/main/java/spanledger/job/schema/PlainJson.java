package spanledger.job.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;

/** Located values as the validator takes them. */
final class PlainJson {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private PlainJson() {}

  static JsonNode of(Located value) {
    if (value instanceof LocatedObject object) {
      ObjectNode node = NODES.objectNode();
      object.entries().forEach(entry -> node.set(entry.key(), of(entry.value())));
      return node;
    }
    if (value instanceof LocatedArray list) {
      ArrayNode node = NODES.arrayNode();
      list.elements().forEach(element -> node.add(of(element)));
      return node;
    }
    if (value instanceof LocatedText text) {
      return NODES.textNode(text.text());
    }
    if (value instanceof LocatedNumber number) {
      return number(number.value());
    }
    return value instanceof LocatedTruth truth
        ? NODES.booleanNode(truth.value())
        : NODES.nullNode();
  }

  /**
   * The validator works on exact decimals, which have no infinity; the largest number stands in.
   */
  private static JsonNode number(double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
    return whole
        ? NODES.numberNode((long) value)
        : NODES.numberNode(Math.max(-Double.MAX_VALUE, Math.min(value, Double.MAX_VALUE)));
  }
}
