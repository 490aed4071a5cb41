package spanledger.tables;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Opens data files: those of this module, and those that users bring. */
final class TableFile {

  private static final ObjectReader READER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build()
          .reader();

  private TableFile() {}

  /**
   * Reads a data file.
   *
   * @param name what messages call it
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is not one JSON object, or no table with commas though its
   *     name ends in {@code .csv}
   * @throws UncheckedIOException if it cannot be read
   */
  static TableObject read(String name, InputStream content) {
    try {
      byte[] bytes = content.readAllBytes();
      if (name.endsWith(".csv")) {
        return new TableObject(name, CsvTable.read(name, new String(bytes, UTF_8)));
      }
      JsonNode root = READER.readTree(bytes);
      if (root instanceof ObjectNode object) {
        return new TableObject(name, object);
      }
      throw new TableFormatException(name + ": expected one JSON object.");
    } catch (JsonProcessingException e) {
      throw new TableFormatException(name + place(e.getLocation()) + ": " + e.getOriginalMessage());
    } catch (IOException e) {
      throw new UncheckedIOException("Cannot read " + name + ".", e);
    }
  }

  /**
   * Reads a data file of this module.
   *
   * @param path below this package, for example {@code rule-sets/as-1657.json}
   */
  static TableObject shipped(String path) {
    try (InputStream content = TableFile.class.getResourceAsStream(path)) {
      if (content == null) {
        throw new TableFormatException(path + " is named in an index, but there is no such file.");
      }
      return read(path, content);
    } catch (IOException e) {
      throw new UncheckedIOException("Cannot close " + path + ".", e);
    }
  }

  /** The data files of a folder of this module, in the order of its index. */
  static List<TableObject> shippedIn(String folder) {
    return shipped(folder + "/index.json").texts("files").stream()
        .map(file -> shipped(folder + "/" + file))
        .toList();
  }

  private static String place(JsonLocation location) {
    return ", line " + location.getLineNr() + ", column " + location.getColumnNr();
  }
}
