package spanledger.job.source;

import java.util.List;
import java.util.Optional;
import spanledger.job.problem.Place;
import spanledger.job.problem.Pointer;

/** A JSON value that knows where it stands. */
public sealed interface Located {

  /** Where it stands in the document. */
  Pointer pointer();

  /** Where it begins in the text. */
  Place place();

  /** What it is, for messages, for example {@code the text "abc"}. */
  String words();

  /**
   * A key of an object and its value.
   *
   * @param key the key
   * @param keyPlace where the key begins
   * @param value its value
   */
  record Entry(String key, Place keyPlace, Located value) {}

  /**
   * An object. Of keys given twice it holds the first.
   *
   * @param entries in the order of the text
   */
  record LocatedObject(Pointer pointer, Place place, List<Entry> entries) implements Located {
    public LocatedObject {
      entries = List.copyOf(entries);
    }

    /** The entry of a key, if there is one. */
    public Optional<Entry> find(String key) {
      return entries.stream().filter(entry -> entry.key().equals(key)).findFirst();
    }

    @Override
    public String words() {
      return "an object {...}";
    }
  }

  /**
   * A list.
   *
   * @param elements in order
   */
  record LocatedArray(Pointer pointer, Place place, List<Located> elements) implements Located {
    public LocatedArray {
      elements = List.copyOf(elements);
    }

    @Override
    public String words() {
      return "a list [...] of " + elements.size();
    }
  }

  /**
   * A text.
   *
   * @param text without its quotation marks, escapes resolved
   */
  record LocatedText(Pointer pointer, Place place, String text) implements Located {
    @Override
    public String words() {
      return "the text " + Quoted.text(text);
    }
  }

  /**
   * A number.
   *
   * @param digits as written
   * @param value the nearest double; infinite if the number is larger than any
   */
  record LocatedNumber(Pointer pointer, Place place, String digits, double value)
      implements Located {
    @Override
    public String words() {
      return "the bare number " + Quoted.shortened(digits);
    }
  }

  /** {@code true} or {@code false}. */
  record LocatedTruth(Pointer pointer, Place place, boolean value) implements Located {
    @Override
    public String words() {
      return String.valueOf(value);
    }
  }

  /** {@code null}. */
  record LocatedNull(Pointer pointer, Place place) implements Located {
    @Override
    public String words() {
      return "null";
    }
  }
}
