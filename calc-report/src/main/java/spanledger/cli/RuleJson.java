package spanledger.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.TreeMap;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;

/** Rule sets, combination rules and member codes for other programs. */
final class RuleJson {

  /** The version of the form; raised when a reader would have to change. */
  private static final int FORMAT_VERSION = 1;

  private RuleJson() {}

  /** The sets as JSON text, ending in a line break. */
  static String of(
      Collection<RuleSet> rules,
      Collection<CombinationSet> combinations,
      Collection<CodeFigures> codes) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "spanledger-rules");
    root.put("formatVersion", FORMAT_VERSION);
    ArrayNode ruleSets = root.putArray("ruleSets");
    rules.forEach(set -> add(ruleSets.addObject(), set));
    ArrayNode combinationSets = root.putArray("combinationSets");
    combinations.forEach(set -> add(combinationSets.addObject(), set));
    ArrayNode memberCodes = root.putArray("memberCodes");
    for (CodeFigures code : codes) {
      ObjectNode one = memberCodes.addObject();
      one.put("id", code.id());
      one.put("title", code.title());
      ArrayNode figures = one.putArray("figures");
      code.inOrder().forEach(figure -> add(figures.addObject(), figure));
    }
    try {
      return new ObjectMapper()
              .enable(SerializationFeature.INDENT_OUTPUT)
              .writeValueAsString(root)
              .replace("\r\n", "\n")
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree of plain nodes can always be written.", e);
    }
  }

  private static void add(ObjectNode node, RuleSet set) {
    node.put("id", set.id());
    node.put("title", set.title());
    ArrayNode directions = node.putArray("railDirections");
    set.railDirections().forEach(direction -> directions.add(direction.words()));
    ArrayNode figures = node.putArray("figures");
    set.inOrder().forEach(figure -> add(figures.addObject(), figure));
  }

  private static void add(ObjectNode node, CombinationSet set) {
    node.put("id", set.id());
    node.put("title", set.title());
    ArrayNode templates = node.putArray("templates");
    for (CombinationTemplate template : set.templates()) {
      ObjectNode one = templates.addObject();
      one.put("name", template.name());
      one.put("limitState", template.limitState().words());
      one.put("withNotionalSway", template.withNotionalSway());
      add(one, template.source());
      ObjectNode factors = one.putObject("factors");
      new TreeMap<>(template.factors())
          .forEach((category, factor) -> add(factors.putObject(category.words()), factor));
    }
    ArrayNode equilibrium = node.putArray("equilibrium");
    for (EquilibriumRule rule : set.equilibrium()) {
      ObjectNode one = equilibrium.addObject();
      one.put("name", rule.name());
      one.put("withNotionalSway", rule.withNotionalSway());
      add(one, rule.source());
      add(one.putObject("holding"), rule.holding());
      add(one.putObject("overturning"), rule.overturning());
      ObjectNode factors = one.putObject("factors");
      new TreeMap<>(rule.factors())
          .forEach((category, factor) -> add(factors.putObject(category.words()), factor));
    }
  }

  private static void add(ObjectNode node, Figure figure) {
    node.put("id", figure.id());
    node.put("words", figure.words());
    node.put("text", figure.text());
    node.put("value", figure.value());
    node.put("unit", figure.dimension().coreUnit());
    add(node, figure.source());
    if (!figure.note().isEmpty()) {
      node.put("note", figure.note());
    }
  }

  private static void add(ObjectNode node, Source source) {
    node.put("work", source.work());
    node.put("place", source.place());
    node.put("confidence", source.confidence().words());
  }
}
