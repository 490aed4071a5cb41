package spanledger.workbook.layout;

/**
 * How wide text is, roughly, in digits of the same size. Only kinds of letters are told apart; for
 * the usual sans-serif fonts that is within a tenth.
 */
final class LetterWidths {

  private static final String THINNEST = "il|'`j";
  private static final String THIN = " .,;:!tfrI()[]/-·";
  private static final String SLIM = "cksvxyzJ";
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
    if (THINNEST.indexOf(letter) >= 0) {
      return 0.42;
    } else if (THIN.indexOf(letter) >= 0) {
      return 0.56;
    } else if (SLIM.indexOf(letter) >= 0) {
      return 0.92;
    } else if (WIDE.indexOf(letter) >= 0) {
      return 1.5;
    }
    return Character.isUpperCase(letter) ? 1.25 : 1;
  }
}
