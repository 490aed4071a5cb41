package spanledger.job.schema;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spanledger.job.problem.Finding;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.tables.NearMiss;

/**
 * What is wrong with a single value.
 *
 * @param value the value
 * @param definition what the schema says of it
 */
record ValueFinding(Located value, JsonNode definition) {

  private static final Map<String, String> TYPES =
      Map.of(
          "object", "an object {...}",
          "array", "a list [...]",
          "string", "a text in quotation marks",
          "number", "a bare number",
          "integer", "a bare whole number",
          "boolean", "true or false",
          "null", "null");

  /** The finding for a keyword that failed. */
  Finding of(String keyword) {
    return switch (keyword) {
      case "type" -> type();
      case "enum" -> choice();
      case "const" -> constant();
      case "pattern" -> form();
      case "minItems", "maxItems" -> count();
      case "minLength" ->
          new Finding("an empty text", described(), "fill it in, or remove the key");
      case "maxLength" ->
          new Finding(
              "a text of " + letters() + " characters",
              "at most " + definition.path("maxLength").asInt() + " characters",
              "shorten it");
      case "minimum", "maximum" ->
          new Finding(value.words(), range() + ": " + described(), "correct the number");
      case "false" ->
          new Finding(
              "the key " + Quoted.text(value.pointer().last()) + " beside one that excludes it",
              "one of the two",
              "remove one of the two");
      default -> new Finding(value.words(), described(), "see docs/job-file.md for this value");
    };
  }

  private Finding type() {
    boolean unquoted =
        value instanceof LocatedNumber && definition.path("type").asText().equals("string");
    return new Finding(
        value.words(),
        types() + ": " + title() + examples(definition),
        unquoted ? "put it in quotation marks, quantities with their unit" : "correct it");
  }

  private Finding choice() {
    List<String> known = new ArrayList<>();
    definition.path("enum").forEach(word -> known.add(word.asText()));
    return new Finding(
        value.words(),
        "one of " + String.join(", ", known.stream().map(Quoted::text).toList()),
        near(known).orElse("choose one of them"));
  }

  private Finding constant() {
    return new Finding(
        value.words(), title() + " " + definition.path("const").asText(), "correct it");
  }

  private Finding form() {
    List<String> known = new ArrayList<>();
    definition.path("examples").forEach(example -> known.add(example.asText()));
    return new Finding(value.words(), described(), near(known).orElse("correct it"));
  }

  private Finding count() {
    int least = definition.path("minItems").asInt();
    int most = definition.path("maxItems").asInt(Integer.MAX_VALUE);
    String wanted =
        least == most
            ? String.valueOf(least)
            : most == Integer.MAX_VALUE ? "at least " + least : least + " to " + most;
    int found = value instanceof LocatedArray list ? list.elements().size() : 0;
    return new Finding(
        "a list of " + found, "a list of " + wanted + ": " + described(), "correct the list");
  }

  private String range() {
    return "from "
        + definition.path("minimum").asText("any")
        + " to "
        + definition.path("maximum").asText("any");
  }

  private String types() {
    JsonNode type = definition.path("type");
    if (type.isTextual()) {
      return TYPES.getOrDefault(type.textValue(), type.textValue());
    }
    List<String> words = new ArrayList<>();
    type.forEach(one -> words.add(TYPES.getOrDefault(one.asText(), one.asText())));
    return String.join(" or ", words);
  }

  private Optional<String> near(List<String> known) {
    return value instanceof LocatedText text
        ? NearMiss.of(text.text(), known).map(word -> "did you mean " + Quoted.text(word) + "?")
        : Optional.empty();
  }

  private int letters() {
    return value instanceof LocatedText text
        ? text.text().codePointCount(0, text.text().length())
        : 0;
  }

  private String title() {
    return definition.path("title").asText("a value");
  }

  private String described() {
    return description(definition) + examples(definition);
  }

  /** The description of a definition, to go on within a sentence. */
  static String description(JsonNode definition) {
    String text = definition.path("description").asText("a value of this form");
    String open = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    boolean word = open.length() > 1 && !Character.isUpperCase(open.charAt(1));
    return word ? open.substring(0, 1).toLowerCase(Locale.ROOT) + open.substring(1) : open;
  }

  /** The first examples of a definition, to follow its description. */
  static String examples(JsonNode definition) {
    List<String> some = new ArrayList<>();
    for (JsonNode example : definition.path("examples")) {
      if (some.size() < 3) {
        some.add(example.toString());
      }
    }
    return some.isEmpty() ? "" : ", for example " + String.join(" or ", some);
  }
}
