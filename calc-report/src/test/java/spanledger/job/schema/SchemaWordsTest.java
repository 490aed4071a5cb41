package spanledger.job.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class SchemaWordsTest {

  /** Keywords that explain, or that lead to others which judge. */
  private static final Set<String> SILENT =
      Set.of(
          "$schema",
          "$id",
          "$ref",
          "$defs",
          "title",
          "description",
          "examples",
          "default",
          "properties",
          "items",
          "allOf",
          "if",
          "then",
          "else",
          "format");

  /** Keywords that judge and for which there are words of our own. */
  private static final Set<String> WORDED =
      Set.of(
          "type",
          "enum",
          "const",
          "pattern",
          "minLength",
          "maxLength",
          "minItems",
          "maxItems",
          "minimum",
          "maximum",
          "minProperties",
          "required",
          "additionalProperties",
          "propertyNames");

  static final List<JsonNode> DOCUMENTS =
      List.of(PublishedSchema.job().document(), PublishedSchema.outline().document());

  @ParameterizedTest
  @FieldSource("DOCUMENTS")
  void theSchemaIsValidUnderItsDraft(JsonNode document) {
    Schema metaSchema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of(document.path("$schema").asText()));

    assertThat(metaSchema.validate(document)).isEmpty();
  }

  @ParameterizedTest
  @FieldSource("DOCUMENTS")
  void everyKeywordThatJudgesHasWords(JsonNode document) {
    Set<String> keywords = new TreeSet<>();
    collect(document, keywords);
    keywords.removeAll(SILENT);

    assertThat(keywords).isSubsetOf(WORDED);
  }

  private static void collect(JsonNode definition, Set<String> into) {
    definition
        .properties()
        .forEach(
            field -> {
              JsonNode value = field.getValue();
              into.add(field.getKey());
              switch (field.getKey()) {
                case "properties", "$defs" -> value.forEach(child -> collect(child, into));
                case "allOf" -> value.forEach(child -> collect(child, into));
                case "items", "if", "then", "else", "additionalProperties", "propertyNames" ->
                    collect(value, into);
                default -> {}
              }
            });
  }
}
