package spanledger.job.source;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.Set;
import spanledger.job.problem.Finding;
import spanledger.job.problem.Place;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;

/** Tells where and why a text stops being JSON. */
final class MalformedJson {

  private static final char NOTHING = '\0';
  private static final Set<String> LITERALS = Set.of("true", "false", "null");

  private final String text;
  private final int offset;
  private final OpenMarks open;
  private final boolean keyJustRead;

  private MalformedJson(String text, int offset, boolean keyJustRead) {
    this.text = text;
    this.offset = Math.min(offset, text.length());
    this.open = new OpenMarks(text, this.offset);
    this.keyJustRead = keyJustRead;
  }

  /** Reports the place at which the parser gave up. */
  static void report(
      String text, JsonProcessingException fault, JsonParser parser, ProblemLog log) {
    JsonLocation given = fault.getLocation();
    JsonLocation location = given == null ? parser.currentLocation() : given;
    int offset = (int) Math.max(location.getCharOffset(), 0);
    boolean keyJustRead = parser.currentToken() == JsonToken.FIELD_NAME;
    MalformedJson malformed = new MalformedJson(text, offset, keyJustRead);
    Finding finding =
        fault instanceof StreamConstraintsException ? beyondLimits() : malformed.diagnose();
    log.error(Pointer.ROOT, TextPlaces.at(text, malformed.begin()), finding);
  }

  /** Reports that the text goes on after the document. */
  static void reportMore(String text, Place place, ProblemLog log) {
    log.error(
        Pointer.ROOT,
        place,
        new Finding(
            "more text after the end of the job",
            "one object {...} and nothing after it",
            "remove what follows, or a bracket } that closes the job too early"));
  }

  private static Finding beyondLimits() {
    return new Finding(
        "brackets nested too deep, or a number or name far too long",
        "the form described in docs/job-file.md",
        "check whether this is the right file");
  }

  /** Where the fault begins: a bare word is pointed at as a whole. */
  private int begin() {
    return open.quote().isPresent() || word().isEmpty() ? offset : wordBegin();
  }

  private Finding diagnose() {
    if (open.quote().isPresent()) {
      return inText(open.quote().getAsInt());
    }
    if (!word().isEmpty()) {
      return atWord(word());
    }
    if (offset >= text.length()) {
      return cutOff();
    }
    char found = text.charAt(offset);
    if (found == '}' || found == ']') {
      return atClosing(found);
    }
    return switch (found) {
      case '\'' ->
          new Finding(
              "a single quotation mark", "double quotation marks", "write \" in place of '");
      case '/', '#' ->
          new Finding(
              "a comment",
              "JSON, which has no comments",
              "remove it, or move it to \"notes\" in \"job\"");
      default -> atOther(found);
    };
  }

  private Finding inText(int quote) {
    Place begin = TextPlaces.at(text, quote);
    char found = offset < text.length() ? text.charAt(offset) : NOTHING;
    boolean escaped = text.lastIndexOf('\\', offset) >= Math.max(quote, offset - 6);
    if (offset >= text.length() || found == '\n' || found == '\r') {
      return new Finding(
          "a text that is not closed; it begins on line " + begin.line(),
          "a closing quotation mark on the same line",
          "close the text with \"");
    }
    if (found < ' ') {
      return new Finding(
          "a tab or control character within a text", "spaces", "write a space in its place");
    }
    return new Finding(
        escaped ? "an escape that JSON does not have" : "a text that is not closed",
        "one of \\\\ \\\" \\/ \\b \\f \\n \\r \\t or \\u with four hexadecimal digits",
        "write \\\\ for a backslash");
  }

  private Finding cutOff() {
    String what = open.inObject() ? "object {" : "list [";
    return new Finding(
        open.bracket()
            .map(at -> "the end of the file inside the " + what + " of line " + lineOf(at))
            .orElse("the end of the file"),
        "closing brackets for all that is open",
        "add the missing " + (open.inObject() ? "}" : "]") + "; perhaps the file was cut off");
  }

  private Finding atClosing(char found) {
    if (open.bracket().isEmpty()) {
      return new Finding(
          "a closing " + found + " that nothing opens", "no more brackets", "remove it");
    }
    if (!open.isClosedBy(found)) {
      char opening = open.inObject() ? '{' : '[';
      char closing = open.inObject() ? '}' : ']';
      return new Finding(
          "a closing "
              + found
              + " while the "
              + opening
              + " of line "
              + lineOf(open.bracket().get())
              + " is open",
          "a closing " + closing,
          "close the inner bracket first");
    }
    if (previous() == ',') {
      return new Finding(
          "a comma before the closing " + found, "no comma after the last entry", "remove it");
    }
    return new Finding(
        "a closing " + found + " where a value is due",
        keyJustRead ? "a colon and a value" : "a value",
        "add the value, or remove the key");
  }

  private Finding atWord(String word) {
    String words = "the word " + Quoted.text(word);
    if (isKeyDue()) {
      return new Finding(words, "a key in double quotation marks", "write " + Quoted.text(word));
    }
    return new Finding(
        words,
        "a text in double quotation marks, a number, true, false or null",
        "put texts in double quotation marks, quantities with their unit");
  }

  private boolean isKeyDue() {
    return open.inObject() && (previous() == '{' || previous() == ',');
  }

  private Finding atOther(char found) {
    if (keyJustRead && previous() == '"') {
      return new Finding(
          shown(found) + " after a key", "a colon between key and value", "add the colon");
    }
    if (isKeyDue()) {
      return new Finding(shown(found), "a key in double quotation marks", "add the key");
    }
    boolean valueDue = previous() == ':' || previous() == ',' || previous() == '[';
    if (!valueDue && (found == '"' || found == '{' || found == '[')) {
      return new Finding(
          shown(found) + " directly after a value", "a comma between entries", "add the comma");
    }
    if (isNumeric(found) || isNumeric(previous())) {
      return new Finding(
          "a number that JSON does not have",
          "a number like 12, -0.5 or 1e3",
          "write digits before and after the point, no plus sign and no leading zeros; "
              + "quantities with a unit are texts, for example \"12.5 mm\"");
    }
    return new Finding(
        shown(found), valueDue ? "a value" : "a comma or a closing bracket", "check this place");
  }

  /** The last character before the fault that is not a space. */
  private char previous() {
    for (int i = begin() - 1; i >= 0; i--) {
      if (!Character.isWhitespace(text.charAt(i))) {
        return text.charAt(i);
      }
    }
    return NOTHING;
  }

  /** The bare word at which the fault is; empty if there is none. */
  private String word() {
    int to = offset;
    while (to < text.length() && Character.isLetterOrDigit(text.charAt(to))) {
      to++;
    }
    String word = text.substring(wordBegin(), to);
    boolean bare = !word.isEmpty() && Character.isLetter(word.charAt(0));
    return bare && !LITERALS.contains(word) ? word : "";
  }

  private int wordBegin() {
    int from = offset;
    while (from > 0 && Character.isLetterOrDigit(text.charAt(from - 1))) {
      from--;
    }
    return from;
  }

  private int lineOf(int place) {
    return TextPlaces.at(text, place).line();
  }

  private static boolean isNumeric(char letter) {
    return (letter >= '0' && letter <= '9') || "+-.".indexOf(letter) >= 0;
  }

  private static String shown(char letter) {
    return "the character " + Quoted.text(String.valueOf(letter));
  }
}
