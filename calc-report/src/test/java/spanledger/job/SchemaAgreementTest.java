package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.job.problem.ProblemLog;
import spanledger.job.problem.ProblemReport;
import spanledger.job.reading.Reading;
import spanledger.job.source.JobFile;
import spanledger.quantity.Dimension;
import spanledger.tables.QuantityReader;

/** The schema and the decoders must know the same keys. */
class SchemaAgreementTest {

  private static final String COMPLETE = Jobs.resource("complete.json");
  private static final String ASSEMBLY = Jobs.resource("complete-assembly.json");

  private static final JsonNode SCHEMA =
      parsed(Jobs.text(Jobs.root().resolve("docs/job.schema.json")));

  @ParameterizedTest
  @ValueSource(strings = {"complete.json", "complete-assembly.json"})
  void aFileWithEveryKeyIsAccepted(String name) {
    ReadJob read = Jobs.read(Jobs.resource(name));

    assertThat(new ProblemReport(name, read.problems()).text()).isEmpty();
    assertThat(read).isInstanceOf(ReadJob.Accepted.class);
  }

  /** Files in which every key occurs make the decoders ask for every key they know. */
  @Test
  void decodersAskForExactlyTheKeysOfTheSchema() {
    Map<String, Set<String>> asked = new TreeMap<>();
    for (String text : List.of(COMPLETE, ASSEMBLY)) {
      ProblemLog log = new ProblemLog("complete.json");
      Reading reading = new Reading(log, Jobs.beside());
      new JobReader(SmallTables.tables()).read(new JobFile(text, ""), log, reading);
      reading
          .asked()
          .forEach((kind, keys) -> asked.computeIfAbsent(kind, k -> new TreeSet<>()).addAll(keys));
    }

    assertThat(asked).isEqualTo(keysOfSchema());
  }

  @Test
  void everyKeyOfTheSchemaOccursInTheFiles() {
    Set<String> occurring = new TreeSet<>();
    collectKeys(parsed(COMPLETE), occurring);
    collectKeys(parsed(ASSEMBLY), occurring);

    keysOfSchema().forEach((kind, keys) -> assertThat(occurring).as(kind).containsAll(keys));
  }

  /**
   * Where the schema offers words, the decoders must know every one; a word unknown to them would
   * throw.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/$defs/member/properties/role/enum | \"role\": \"other\", \"nodes\": [\"A2\", \"B2\"] | \"role\": \"%s\", \"nodes\": [\"A2\", \"B2\"]",
        "/$defs/wholeJoint/enum | \"start\": \"pinned\", \"end\": {\"torsion\" | \"start\": \"%s\", \"end\": {\"torsion\"",
        "/$defs/support/properties/type/enum | \"type\": \"fixed\" | \"type\": \"%s\"",
        "/$defs/publishedMaterial/properties/form/enum | \"form\": \"hollow-profile\" | \"form\": \"%s\"",
        "/$defs/ownMaterial/properties/bucklingClass/enum | \"bucklingClass\": \"A\" | \"bucklingClass\": \"%s\"",
        "/$defs/surface/properties/bays/enum | \"bays\": \"strips\" | \"bays\": \"%s\"",
        "/$defs/rail/properties/kind/enum | \"kind\": \"top\" | \"kind\": \"%s\"",
        "/$defs/userCase/properties/category/enum | \"category\": \"wind\" | \"category\": \"%s\"",
        "/$defs/bucklingLength/properties/modes/items/enum | \"modes\": [\"flexural-y\"] | \"modes\": [\"%s\"]",
        "/$defs/memberWeld/properties/method/enum | \"method\": \"mig\" | \"method\": \"%s\"",
        "/$defs/anyAxis/enum | \"direction\": \"-Z\" | \"direction\": \"%s\"",
        "/$defs/jointHold/examples | \"torsion\": \"rigid\" | \"torsion\": \"%s\"",
        "/$defs/shiftHold/examples | \"shiftX\": \"free\" | \"shiftX\": \"%s\"",
        "/$defs/turnHold/examples | \"turnX\": \"12 kN*m/rad\" | \"turnX\": \"%s\"",
      })
  void decodersKnowEveryWordOfTheSchema(String where, String find, String with) {
    JsonNode words = SCHEMA.at(where);
    assertThat(words).as(where).isNotEmpty();
    assertThat(COMPLETE).contains(find);
    for (JsonNode word : words) {
      ReadJob read = Jobs.read(COMPLETE.replace(find, String.format(with, word.asText())));
      assertThat(read).as(word.asText()).isInstanceOf(ReadJob.Accepted.class);
    }
  }

  @Test
  void decodersKnowEveryShapeOfTheSchema() {
    for (JsonNode shape : SCHEMA.at("/$defs/section/properties/shape/enum")) {
      assertThat(COMPLETE).contains("\"shape\": \"" + shape.asText() + "\"");
    }
  }

  /** Every quantity that the schema shows as an example is a quantity for the decoders. */
  @ParameterizedTest
  @CsvSource({
    "length, LENGTH",
    "distance, LENGTH",
    "turnAngle, NONE",
    "force, FORCE",
    "moment, MOMENT",
    "lineLoad, LINE_LOAD",
    "stress, STRESS",
    "areaLoad, STRESS",
    "area, AREA",
    "sectionModulusSize, SECTION_MODULUS",
    "secondMomentSize, SECOND_MOMENT",
    "density, DENSITY",
    "ratio, NONE",
  })
  void exampleQuantitiesCanBeRead(String definition, String dimension) throws Exception {
    Dimension expected = (Dimension) Dimension.class.getField(dimension).get(null);
    for (JsonNode example : SCHEMA.path("$defs").path(definition).path("examples")) {
      assertThat(QuantityReader.read(example.asText(), expected)).isFinite();
    }
  }

  /** The keys of every closed object of the schema, by definition; the document itself is "job". */
  private static Map<String, Set<String>> keysOfSchema() {
    Map<String, Set<String>> keys = new TreeMap<>();
    keys.put("job", names(SCHEMA.path("properties")));
    for (String kind : names(SCHEMA.path("$defs"))) {
      JsonNode definition = SCHEMA.path("$defs").path(kind);
      if (definition.has("additionalProperties")) {
        assertThat(definition.path("additionalProperties").booleanValue()).as(kind).isFalse();
        keys.put(kind, names(definition.path("properties")));
      }
    }
    return keys;
  }

  private static JsonNode parsed(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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
