package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import spanledger.job.problem.ProblemLog;
import spanledger.job.problem.ProblemReport;
import spanledger.job.source.JobFile;

/** The schema and the decoders must know the same keys. */
class SchemaAgreementTest {

  private static final String COMPLETE = Jobs.resource("complete.json");

  @Test
  void aFileWithEveryKeyIsAccepted() {
    ReadJob read = Jobs.read(COMPLETE);

    assertThat(new ProblemReport("complete.json", read.problems()).text()).isEmpty();
    assertThat(read).isInstanceOf(ReadJob.Accepted.class);
  }

  /** A file in which every key occurs makes the decoders ask for every key they know. */
  @Test
  void decodersAskForExactlyTheKeysOfTheSchema() throws IOException {
    ProblemLog log = new ProblemLog("complete.json");
    Reading reading = new Reading(log);
    new JobReader(SmallTables.tables()).read(new JobFile(COMPLETE, ""), log, reading);

    assertThat(reading.asked()).isEqualTo(keysOfSchema());
  }

  @Test
  void everyKeyOfTheSchemaOccursInTheFile() throws IOException {
    Set<String> occurring = new TreeSet<>();
    collectKeys(new ObjectMapper().readTree(COMPLETE), occurring);

    keysOfSchema().forEach((kind, keys) -> assertThat(occurring).as(kind).containsAll(keys));
  }

  /** The keys of every closed object of the schema, by definition; the document itself is "job". */
  private static Map<String, Set<String>> keysOfSchema() throws IOException {
    JsonNode schema =
        new ObjectMapper().readTree(Jobs.text(Jobs.root().resolve("docs/job.schema.json")));
    Map<String, Set<String>> keys = new TreeMap<>();
    keys.put("job", names(schema.path("properties")));
    for (String kind : names(schema.path("$defs"))) {
      JsonNode definition = schema.path("$defs").path(kind);
      if (definition.has("additionalProperties")) {
        assertThat(definition.path("additionalProperties").booleanValue()).as(kind).isFalse();
        keys.put(kind, names(definition.path("properties")));
      }
    }
    return keys;
  }

  private static Set<String> names(JsonNode object) {
    Set<String> names = new TreeSet<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static void collectKeys(JsonNode node, Set<String> into) {
    node.fieldNames().forEachRemaining(into::add);
    node.forEach(child -> collectKeys(child, into));
  }
}
