package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * docs/job-file.md must name every key and word of the schema, and the schema must explain itself.
 */
class JobFileReferenceTest {

  private static JsonNode schema;

  @BeforeAll
  static void readSchema() throws IOException {
    schema = new ObjectMapper().readTree(Jobs.text(Jobs.root().resolve("docs/job.schema.json")));
  }

  @Test
  void theReferenceNamesEveryKeyAndWord() {
    String reference = Jobs.text(Jobs.root().resolve("docs/job-file.md"));
    Set<String> missing = new TreeSet<>();
    for (String word : words(schema, new TreeSet<>())) {
      if (!reference.contains("`" + word + "`") && !reference.contains("`\"" + word + "\"`")) {
        missing.add(word);
      }
    }
    assertThat(missing).isEmpty();
  }

  /** Editors show titles and descriptions and complete from examples, words and constants. */
  @Test
  void everyDefinitionHasTitleAndDescription() {
    schema
        .path("$defs")
        .properties()
        .forEach(
            definition -> {
              JsonNode node = definition.getValue();
              assertThat(node.path("title").asText()).as(definition.getKey()).isNotBlank();
              assertThat(node.path("description").asText()).as(definition.getKey()).isNotBlank();
            });
  }

  @Test
  void everyTextOfTheSchemaShowsHowToWriteIt() {
    Set<String> silent = new TreeSet<>();
    collectSilent(schema, "", silent);
    assertThat(silent).isEmpty();
  }

  private static void collectSilent(JsonNode node, String path, Set<String> into) {
    boolean text = node.path("type").asText().equals("string") && node.has("title");
    if (text && !node.has("examples") && !node.has("enum")) {
      into.add(path);
    }
    node.properties()
        .forEach(field -> collectSilent(field.getValue(), path + "/" + field.getKey(), into));
  }

  /** Keys of objects and words of choices; axes are explained as such, not listed one by one. */
  private static Set<String> words(JsonNode node, Set<String> into) {
    node.path("properties").fieldNames().forEachRemaining(into::add);
    if (!node.path("title").asText().endsWith("axis")) {
      node.path("enum").forEach(word -> into.add(word.asText()));
    }
    node.forEach(child -> words(child, into));
    return into;
  }
}
