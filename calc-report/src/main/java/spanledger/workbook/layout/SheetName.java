package spanledger.workbook.layout;

import java.util.regex.Pattern;

/** The names that sheets may bear and how formulas write them. */
final class SheetName {

  private static final int LONGEST = 31;
  private static final Pattern FORBIDDEN = Pattern.compile("[\\[\\]{}:*?/\\\\\\p{Cntrl}]|^'|'$");

  /** Anything else may look like a cell, a number or an operator to some program. */
  private static final Pattern PLAIN = Pattern.compile("(?!(?i:true|false)$)[A-Za-z]{4,}");

  private SheetName() {}

  static String required(String name) {
    if (name.isBlank() || name.length() > LONGEST || FORBIDDEN.matcher(name).find()) {
      throw new IllegalArgumentException(
          "The sheet name \""
              + name
              + "\" must have 1 to "
              + LONGEST
              + " characters, none of [ ] { } : * ? / \\ and no apostrophe at its ends.");
    }
    return name;
  }

  /** The words without what is forbidden, cut to the greatest length. */
  static String from(String words) {
    String allowed = words.replaceAll("[\\[\\]{}:*?/\\\\'\\p{Cntrl}]", " ");
    return allowed.substring(0, Math.min(LONGEST, allowed.length())).strip();
  }

  static String inFormula(String name) {
    return PLAIN.matcher(name).matches() ? name : "'" + name.replace("'", "''") + "'";
  }
}
