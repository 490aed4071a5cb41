package spanledger.job.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.PathType;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.job.problem.ProblemLog;
import spanledger.job.source.Located;
import spanledger.job.source.Located.Entry;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedObject;

/**
 * A published schema of {@code docs}, which decides how a file is built: that of job files or that
 * of outline files.
 */
public final class PublishedSchema {

  private final JsonNode document;
  private final Schema schema;

  private PublishedSchema(JsonNode document) {
    this.document = document;
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().pathType(PathType.JSON_POINTER).build();
    this.schema =
        SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12, builder -> builder.schemaRegistryConfig(config))
            .getSchema(document);
  }

  /**
   * The schema of job files, {@code docs/job.schema.json}.
   *
   * @throws IllegalStateException if it is missing; a fault of the build
   */
  public static PublishedSchema job() {
    return load("job.schema.json");
  }

  /**
   * The schema of outline files, {@code docs/outline.schema.json}.
   *
   * @throws IllegalStateException if it is missing; a fault of the build
   */
  public static PublishedSchema outline() {
    return load("outline.schema.json");
  }

  private static PublishedSchema load(String resource) {
    try (InputStream stream = PublishedSchema.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException(resource + " is missing from the program's jar.");
      }
      return new PublishedSchema(new ObjectMapper().readTree(stream));
    } catch (IOException e) {
      throw new IllegalStateException(resource + " in the program's jar cannot be read.", e);
    }
  }

  /** The schema as JSON. */
  JsonNode document() {
    return document;
  }

  /**
   * Reports how a document departs from the schema. A value at whose place something is reported
   * already is passed over.
   *
   * @param root the document, or the part of a larger one that the schema is about
   * @param log takes the problems
   */
  public void report(Located root, ProblemLog log) {
    Map<String, Located> values = new HashMap<>();
    collect(root, root.pointer().text().length(), values);
    List<Error> errors = schema.validate(PlainJson.of(root));
    new SchemaFindings(document, values, log).report(errors);
  }

  private static void collect(Located value, int prefix, Map<String, Located> into) {
    into.put(value.pointer().text().substring(prefix), value);
    if (value instanceof LocatedObject object) {
      for (Entry entry : object.entries()) {
        collect(entry.value(), prefix, into);
      }
    } else if (value instanceof LocatedArray list) {
      list.elements().forEach(element -> collect(element, prefix, into));
    }
  }
}
