package spanledger.job.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spanledger.job.problem.Finding;
import spanledger.job.problem.Place;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;
import spanledger.job.source.Located.Entry;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedNull;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;

/** Reads JSON into values that know their places, and finds keys given twice. */
public final class JsonTreeReader {

  /**
   * A job file nests about ten levels; deeper nesting is refused before it can exhaust the stack.
   */
  private static final int DEEPEST = 64;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
          .build();

  private static final Finding NOTHING =
      new Finding("an empty file", "a job", "start from one of docs/examples");

  private final JsonParser parser;
  private final ProblemLog log;

  private JsonTreeReader(JsonParser parser, ProblemLog log) {
    this.parser = parser;
    this.log = log;
  }

  /**
   * Reads a document.
   *
   * @param text the whole document
   * @param log takes keys given twice, or the one place at which the text stops being JSON
   * @return the document, unless the text is not JSON
   */
  public static Optional<Located> read(String text, ProblemLog log) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      try {
        if (parser.nextToken() == null) {
          log.error(Pointer.ROOT, Place.WHOLE_FILE, NOTHING);
          return Optional.empty();
        }
        Located root = new JsonTreeReader(parser, log).value(Pointer.ROOT);
        if (parser.nextToken() != null) {
          MalformedJson.reportMore(text, place(parser.currentTokenLocation()), log);
          return Optional.empty();
        }
        return Optional.of(root);
      } catch (JsonProcessingException e) {
        MalformedJson.report(text, e, parser, log);
        return Optional.empty();
      }
    } catch (IOException e) {
      throw new IllegalStateException("A text in memory cannot fail to be read.", e);
    }
  }

  private Located value(Pointer pointer) throws IOException {
    Place place = place(parser.currentTokenLocation());
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(pointer, place);
      case START_ARRAY -> array(pointer, place);
      case VALUE_STRING -> text(pointer, place);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(pointer, place);
      case VALUE_TRUE -> new LocatedTruth(pointer, place, true);
      case VALUE_FALSE -> new LocatedTruth(pointer, place, false);
      case VALUE_NULL -> new LocatedNull(pointer, place);
      default -> throw new IllegalStateException("Unexpected token " + parser.currentToken());
    };
  }

  private LocatedText text(Pointer pointer, Place place) throws IOException {
    String text = parser.getText();
    checkPrintable(text, pointer, place);
    return new LocatedText(pointer, place, text);
  }

  /** Control characters and halves of characters cannot be written into documents. */
  private void checkPrintable(String text, Pointer pointer, Place place) {
    OptionalInt odd = text.codePoints().filter(letter -> !Quoted.isPrintable(letter)).findFirst();
    if (odd.isPresent()) {
      log.error(
          pointer,
          place,
          new Finding(
              String.format("the character U+%04X in a text", odd.getAsInt()),
              "texts of characters that can be printed, on one line",
              "remove the character"));
    }
  }

  private LocatedNumber number(Pointer pointer, Place place) throws IOException {
    String digits = parser.getText();
    return new LocatedNumber(pointer, place, digits, Double.parseDouble(digits));
  }

  private LocatedArray array(Pointer pointer, Place place) throws IOException {
    List<Located> elements = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      elements.add(value(pointer.child(elements.size())));
    }
    return new LocatedArray(pointer, place, elements);
  }

  private LocatedObject object(Pointer pointer, Place place) throws IOException {
    Map<String, Entry> first = new HashMap<>();
    List<Entry> entries = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      Place keyPlace = place(parser.currentTokenLocation());
      parser.nextToken();
      Entry entry = new Entry(key, keyPlace, value(pointer.child(key)));
      checkPrintable(key, entry.value().pointer(), keyPlace);
      Entry earlier = first.putIfAbsent(key, entry);
      if (earlier == null) {
        entries.add(entry);
      } else {
        reportTwice(entry, earlier);
      }
    }
    return new LocatedObject(pointer, place, entries);
  }

  private void reportTwice(Entry entry, Entry earlier) {
    String name = Quoted.text(entry.key());
    log.error(
        entry.value().pointer(),
        entry.keyPlace(),
        new Finding(
            name + " a second time; the first is on line " + earlier.keyPlace().line(),
            "each name once",
            "rename or remove one of the two"));
  }

  static Place place(JsonLocation location) {
    return new Place(Math.max(location.getLineNr(), 1), Math.max(location.getColumnNr(), 1));
  }
}
