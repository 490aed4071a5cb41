package spanledger.job.source;

import spanledger.job.problem.Place;

/** Turns offsets in a text into lines and columns. */
final class TextPlaces {

  private TextPlaces() {}

  /** The place just after the last character. */
  static Place endOf(String text) {
    return at(text, text.length());
  }

  /** The place of the character at an offset; a line ends at LF, CR or both together. */
  static Place at(String text, int offset) {
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < offset; i++) {
      char letter = text.charAt(i);
      boolean brokenByBoth = letter == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (letter == '\n' || (letter == '\r' && !brokenByBoth)) {
        line++;
        lineStart = i + 1;
      }
    }
    return new Place(line, offset - lineStart + 1);
  }
}
