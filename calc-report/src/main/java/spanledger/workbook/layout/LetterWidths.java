package spanledger.workbook.layout;

/**
 * How wide text is, roughly, in digits of the same size. Only kinds of letters are told apart; for
 * the usual sans-serif fonts that is within a tenth.
 */
final class LetterWidths {

  private static final String NARROW = " .,;:!|'`iljtfrI()[]/-·";
  private static final String WIDE = "mwMWGOQ@%→≤≥√Ω";

  private LetterWidths() {}

  /** The width of a text on one line. */
  static double of(String text) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      width += of(text.charAt(i));
    }
    return width;
  }

  static double of(char letter) {
    if (NARROW.indexOf(letter) >= 0) {
      return 0.55;
    } else if (WIDE.indexOf(letter) >= 0) {
      return 1.5;
    } else if (Character.isUpperCase(letter)) {
      return 1.25;
    }
    return 1;
  }
}
