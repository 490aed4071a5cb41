package spanledger.job.source;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalInt;

/** The brackets and the quotation mark that are still open at some offset of a JSON text. */
final class OpenMarks {

  private final String text;
  private final Deque<Integer> brackets = new ArrayDeque<>();
  private int quote = -1;

  /**
   * Goes through the text up to an offset; up to there it must be JSON.
   *
   * @param text the document
   * @param offset the first character not looked at
   */
  OpenMarks(String text, int offset) {
    this.text = text;
    for (int i = 0; i < offset; i++) {
      char letter = text.charAt(i);
      if (quote >= 0) {
        if (letter == '\\') {
          i++;
        } else if (letter == '"') {
          quote = -1;
        }
      } else if (letter == '"') {
        quote = i;
      } else if (letter == '{' || letter == '[') {
        brackets.push(i);
      } else if (letter == '}' || letter == ']') {
        brackets.poll();
      }
    }
  }

  /**
   * The offset of the quotation mark that begins the text in which the offset is, if it is in one.
   */
  OptionalInt quote() {
    return quote < 0 ? OptionalInt.empty() : OptionalInt.of(quote);
  }

  /** The offset of the innermost open bracket. */
  Optional<Integer> bracket() {
    return Optional.ofNullable(brackets.peek());
  }

  /** Whether the innermost open bracket is that of an object. */
  boolean inObject() {
    return bracket().map(at -> text.charAt(at) == '{').orElse(false);
  }

  /** Whether a closing bracket fits the innermost open one. */
  boolean isClosedBy(char closing) {
    return bracket().isPresent() && inObject() == (closing == '}');
  }
}
