package spanledger.workbook.layout;

import java.util.regex.Pattern;

/** Text as it must be written to be read back the same. */
final class CellText {

  /**
   * Readers of the format take {@code _x0041_} for the character with that number (ECMA-376 Part 1,
   * ST_Xstring), so such text must itself be written with its underscore as {@code _x005F_}.
   */
  private static final Pattern ESCAPE_LIKE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  /** Characters that no XML document may hold. */
  private static final Pattern NOT_XML =
      Pattern.compile("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uFFFF]");

  private CellText() {}

  static String encoded(String words) {
    String safe =
        NOT_XML.matcher(words).replaceAll("\uFFFD").replace("\r\n", "\n").replace('\r', '\n');
    return safe.indexOf('_') < 0 ? safe : ESCAPE_LIKE.matcher(safe).replaceAll("_x005F_");
  }
}
