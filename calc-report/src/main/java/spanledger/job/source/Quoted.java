package spanledger.job.source;

/** Puts texts of a file into messages: on one line and not too long. */
public final class Quoted {

  private static final int LONGEST = 60;

  private Quoted() {}

  /** The text in quotation marks, shortened, without line breaks and control characters. */
  public static String text(String text) {
    return '"' + shortened(text) + '"';
  }

  /** The text, shortened, without line breaks and control characters. */
  public static String shortened(String text) {
    StringBuilder plain = new StringBuilder();
    int count = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (count++ == LONGEST) {
        return plain.append("...").toString();
      }
      int letter = text.codePointAt(i);
      plain.appendCodePoint(isPrintable(letter) ? letter : '\uFFFD');
    }
    return plain.toString();
  }

  /** Whether a character can be printed and stored in documents. */
  static boolean isPrintable(int letter) {
    return switch (Character.getType(letter)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
