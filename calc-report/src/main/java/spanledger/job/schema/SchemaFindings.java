package spanledger.job.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.job.problem.Finding;
import spanledger.job.problem.Place;
import spanledger.job.problem.ProblemLog;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Quoted;
import spanledger.tables.NearMiss;

/** Puts what the validator finds into our own words, at the place in the file. */
final class SchemaFindings {

  private final JsonNode schema;
  private final Map<String, Located> values;
  private final ProblemLog log;
  private final Map<String, Set<String>> missing = new HashMap<>();
  private final Set<Place> told = new HashSet<>();

  /**
   * Findings for one document.
   *
   * @param schema the schema
   * @param values all values of the document by their pointers within it
   * @param log takes the problems
   */
  SchemaFindings(JsonNode schema, Map<String, Located> values, ProblemLog log) {
    this.schema = schema;
    this.values = values;
    this.log = log;
  }

  /** Reports all errors; a key that is missing only because it is misspelt is reported once. */
  void report(List<Error> errors) {
    for (Error error : errors) {
      if (error.getKeyword().equals("required")) {
        missing.computeIfAbsent(pointer(error), p -> new TreeSet<>()).add(error.getProperty());
      }
    }
    for (Error error : errors) {
      if (error.getKeyword().equals("additionalProperties")) {
        reportUnknownKey(error);
      }
    }
    for (Error error : errors) {
      Located value = value(pointer(error));
      switch (error.getKeyword()) {
        case "required" -> reportMissingKey(error, value);
        case "propertyNames" -> reportName(error, value);
        case "minProperties" -> log.error(value.pointer(), value.place(), few(value, error));
        case "additionalProperties" -> {}
        default -> reportValue(error, value);
      }
    }
  }

  private void reportUnknownKey(Error error) {
    Located object = value(pointer(error));
    String key = error.getProperty();
    Set<String> known = new TreeSet<>();
    keywordOwner(error).path("properties").fieldNames().forEachRemaining(known::add);
    Set<String> absent = missing.getOrDefault(pointer(error), Set.of());
    Set<String> present = keys(object);
    Optional<String> meant = NearMiss.of(key, absent);
    meant.ifPresent(absent::remove);
    Set<String> free = new TreeSet<>(known);
    free.removeAll(present);
    Set<String> used = new TreeSet<>(known);
    used.retainAll(present);
    String remedy =
        meant
            .or(() -> NearMiss.of(key, free))
            .map(near -> "did you mean " + Quoted.text(near) + "?")
            .or(
                () ->
                    NearMiss.of(key, used)
                        .map(near -> "remove it: " + Quoted.text(near) + " is here already"))
            .orElse("remove it");
    log.error(
        object.pointer().child(key),
        keyPlace(object, key),
        new Finding("the unknown key " + Quoted.text(key), expectedKeys(free, used), remedy));
  }

  private static String expectedKeys(Set<String> free, Set<String> used) {
    String besides = used.isEmpty() ? "" : " besides " + String.join(", ", used);
    return free.isEmpty()
        ? "no further key" + besides
        : "one of " + String.join(", ", free) + (used.isEmpty() ? "" : "," + besides);
  }

  private void reportMissingKey(Error error, Located value) {
    String key = error.getProperty();
    Set<String> absent = missing.getOrDefault(pointer(error), Set.of());
    if (absent.remove(key)) {
      JsonNode wanted = objectDefinition(error).path("properties").path(key);
      String words = wanted.isMissingNode() ? "" : ": " + words(wanted);
      log.error(
          value.pointer(),
          value.place(),
          new Finding("no key " + Quoted.text(key), Quoted.text(key) + words, "add it"));
    }
  }

  private void reportName(Error error, Located value) {
    String name = error.getProperty();
    JsonNode wanted = resolved(keywordOwner(error).path("propertyNames"));
    log.error(
        value.pointer().child(name),
        keyPlace(value, name),
        new Finding("the name " + Quoted.text(name), words(wanted), "choose another name"));
  }

  private void reportValue(Error error, Located value) {
    if (!log.hasReported(value.place()) && told.add(value.place())) {
      Finding finding = new ValueFinding(value, keywordOwner(error)).of(error.getKeyword());
      log.error(value.pointer(), value.place(), finding);
    }
  }

  private Finding few(Located value, Error error) {
    JsonNode owner = keywordOwner(error);
    return new Finding(
        keys(value).size() + " in " + Quoted.text(value.pointer().last()),
        "at least " + owner.path("minProperties").asInt() + ": " + words(owner),
        "add what is missing");
  }

  /**
   * What a definition describes; a description beside a reference counts before the one referred
   * to.
   */
  private String words(JsonNode definition) {
    JsonNode whole = resolved(definition);
    return ValueFinding.description(definition.has("description") ? definition : whole)
        + ValueFinding.examples(definition.has("examples") ? definition : whole);
  }

  /** The schema object of which the keyword that failed is a key. */
  private JsonNode keywordOwner(Error error) {
    String path = error.getSchemaLocation().getFragment().toString();
    return schema.at(path.substring(0, path.lastIndexOf('/')));
  }

  /** The definition of the object in which a key is missing; conditions stand within it. */
  private JsonNode objectDefinition(Error error) {
    String path = error.getSchemaLocation().getFragment().toString();
    return schema.at(path.replaceAll("(/then|/else)*/required$", ""));
  }

  private JsonNode resolved(JsonNode definition) {
    JsonNode reference = definition.path("$ref");
    return reference.isTextual() ? schema.at(reference.textValue().substring(1)) : definition;
  }

  private static Place keyPlace(Located value, String key) {
    return value instanceof LocatedObject known
        ? known.find(key).map(Located.Entry::keyPlace).orElse(value.place())
        : value.place();
  }

  private static Set<String> keys(Located value) {
    Set<String> keys = new TreeSet<>();
    if (value instanceof LocatedObject object) {
      object.entries().forEach(entry -> keys.add(entry.key()));
    }
    return keys;
  }

  private Located value(String pointer) {
    Located value = values.get(pointer);
    if (value == null) {
      throw new IllegalStateException("The validator names a place that is not there: " + pointer);
    }
    return value;
  }

  private static String pointer(Error error) {
    return error.getInstanceLocation().toString();
  }
}
