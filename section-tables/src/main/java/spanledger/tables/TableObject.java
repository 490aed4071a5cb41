package spanledger.tables;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import spanledger.provenance.Confidence;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** An object in a data file that knows where it stands, so that every fault names file and row. */
final class TableObject {

  private static final Map<String, Confidence> CONFIDENCES =
      Map.of(
          "published", Confidence.PUBLISHED,
          "from memory", Confidence.FROM_MEMORY,
          "derived", Confidence.DERIVED,
          "common practice", Confidence.COMMON_PRACTICE);

  private final String where;
  private final ObjectNode node;

  TableObject(String where, ObjectNode node) {
    this.where = where;
    this.node = node;
  }

  /** This object with members of another where its own are left out. */
  TableObject orFrom(TableObject other, String... names) {
    ObjectNode whole = node.deepCopy();
    for (String name : names) {
      if (!whole.has(name) && other.node.has(name)) {
        whole.set(name, other.node.get(name));
      }
    }
    return new TableObject(where, whole);
  }

  /** Whether it has a member of this name. */
  boolean has(String name) {
    return node.has(name);
  }

  /** A fault in this object. */
  TableFormatException fault(String what) {
    return new TableFormatException(where + ": " + what);
  }

  /** Refuses members of other names. */
  void allowOnly(String... names) {
    List<String> allowed = List.of(names);
    for (Iterator<String> found = node.fieldNames(); found.hasNext(); ) {
      String name = found.next();
      if (!allowed.contains(name)) {
        throw fault(
            "\""
                + name
                + "\" means nothing here. "
                + NearMiss.question(name, allowed)
                + "Allowed: "
                + String.join(", ", allowed)
                + ".");
      }
    }
  }

  /** A text that must be there and not be blank. */
  String text(String name) {
    return optionalText(name).orElseThrow(() -> fault("\"" + name + "\" is missing."));
  }

  /** A text that may be left out. */
  Optional<String> optionalText(String name) {
    JsonNode value = node.get(name);
    if (value == null) {
      return Optional.empty();
    }
    return Optional.of(textOf(name, value));
  }

  /** A list of texts. */
  List<String> texts(String name) {
    List<String> texts = new ArrayList<>();
    for (JsonNode element : array(name)) {
      texts.add(textOf(name, element));
    }
    return texts;
  }

  /** A quantity in core units. */
  double quantity(String name, Dimension dimension) {
    try {
      return QuantityReader.read(text(name), dimension);
    } catch (QuantityFormatException e) {
      throw fault("\"" + name + "\": " + e.getMessage());
    }
  }

  /** A quantity in core units that may be left out. */
  Optional<Double> optionalQuantity(String name, Dimension dimension) {
    return node.has(name) ? Optional.of(quantity(name, dimension)) : Optional.empty();
  }

  /** A yes or no. */
  boolean flag(String name) {
    JsonNode value = node.get(name);
    if (value == null || !value.isBoolean()) {
      throw fault("\"" + name + "\" must be true or false.");
    }
    return value.booleanValue();
  }

  /** What a word stands for. */
  <T> T word(String name, Map<String, T> meanings) {
    return meaning(name, text(name), meanings);
  }

  /** What each word of a list stands for. */
  <T> List<T> words(String name, Map<String, T> meanings) {
    return texts(name).stream().map(word -> meaning(name, word, meanings)).toList();
  }

  /** The members {@code work}, {@code place} (may be left out) and {@code confidence}. */
  Source source() {
    return source("work", "place", "confidence");
  }

  /** A source from members of other names; the place may be left out. */
  Source source(String work, String place, String confidence) {
    return new Source(text(work), optionalText(place).orElse(""), word(confidence, CONFIDENCES));
  }

  /** An object within this one. */
  TableObject object(String name) {
    if (node.get(name) instanceof ObjectNode object) {
      return new TableObject(where + ", " + name, object);
    }
    throw fault("\"" + name + "\" must be an object.");
  }

  /** A list of objects; each is called by its number and, if it has that member, its name. */
  List<TableObject> rows(String name, String nameMember) {
    List<TableObject> rows = new ArrayList<>();
    for (JsonNode element : array(name)) {
      String place = where + ", " + name + ", row " + (rows.size() + 1);
      if (!(element instanceof ObjectNode object)) {
        throw new TableFormatException(place + ": expected an object.");
      }
      JsonNode called = object.get(nameMember);
      String title = called != null && called.isTextual() ? " (" + called.textValue() + ")" : "";
      rows.add(new TableObject(place + title, object));
    }
    if (rows.isEmpty()) {
      throw fault("\"" + name + "\" has no rows.");
    }
    return rows;
  }

  /**
   * Reads every row.
   *
   * @throws TableFormatException naming all rows with faults, one line each
   */
  static <T> List<T> readAll(List<TableObject> rows, Function<TableObject, T> reader) {
    List<T> read = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (TableObject row : rows) {
      try {
        read.add(reader.apply(row));
      } catch (TableFormatException e) {
        faults.add(String.valueOf(e.getMessage()));
      } catch (IllegalArgumentException e) {
        faults.add(row.fault(String.valueOf(e.getMessage())).getMessage());
      }
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException(String.join("\n", faults));
    }
    return read;
  }

  /** An object whose members are all texts, in order of their names. */
  Map<String, String> textsByName(String name) {
    TableObject inner = object(name);
    Map<String, String> texts = new TreeMap<>();
    inner.node.fieldNames().forEachRemaining(key -> texts.put(key, inner.text(key)));
    return texts;
  }

  /** What a word stands for; the fault names the member it stands in. */
  <T> T meaning(String name, String word, Map<String, T> meanings) {
    @Nullable T meaning = meanings.get(word);
    if (meaning == null) {
      throw fault("\"" + name + "\" is \"" + word + "\"." + choices(word, meanings.keySet()));
    }
    return meaning;
  }

  /** The question which of some names was meant, and the names. */
  static String choices(String found, Collection<String> known) {
    return " "
        + NearMiss.question(found, known)
        + "Known: "
        + String.join(", ", new TreeSet<>(known))
        + ".";
  }

  private ArrayNode array(String name) {
    if (node.get(name) instanceof ArrayNode array) {
      return array;
    }
    throw fault("\"" + name + "\" must be a list.");
  }

  private String textOf(String name, JsonNode value) {
    if (!value.isTextual() || value.textValue().isBlank()) {
      throw fault("\"" + name + "\" must be a text in quotation marks, not blank.");
    }
    return value.textValue();
  }
}
