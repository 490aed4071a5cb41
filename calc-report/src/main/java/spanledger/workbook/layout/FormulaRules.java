package spanledger.workbook.layout;

import java.util.List;
import java.util.Set;

/**
 * What a formula in the workbook may contain: functions that every spreadsheet program has had for
 * many years under the same name, none of which is volatile, hides errors or spills over cells; and
 * no other files.
 */
public final class FormulaRules {

  /** The functions that formulas may use. */
  public static final Set<String> ALLOWED_FUNCTIONS =
      Set.of(
          "ABS",
          "ACOS",
          "AND",
          "ASIN",
          "ATAN",
          "ATAN2",
          "COLUMNS",
          "COS",
          "COUNT",
          "COUNTIF",
          "EXP",
          "IF",
          "INDEX",
          "INT",
          "ISNUMBER",
          "LN",
          "LOG10",
          "MATCH",
          "MAX",
          "MIN",
          "MOD",
          "NA",
          "NOT",
          "OR",
          "PI",
          "POWER",
          "ROUND",
          "ROW",
          "ROWS",
          "SIGN",
          "SIN",
          "SQRT",
          "SUM",
          "SUMPRODUCT",
          "SUMSQ",
          "TAN",
          "TANH");

  /** The longest formula a spreadsheet program takes, without the equals sign. */
  private static final int LONGEST = 8191;

  private FormulaRules() {}

  /**
   * Checks a formula, written without the leading equals sign.
   *
   * @return the formula
   * @throws IllegalArgumentException saying what is not allowed in it
   */
  public static String required(String formula) {
    if (formula.isEmpty() || formula.charAt(0) == '=') {
      throw refused(formula, "it must have text and no leading equals sign");
    }
    if (formula.length() > LONGEST) {
      throw refused(
          formula.substring(0, 80) + " ..",
          "it has " + formula.length() + " characters, at most " + LONGEST + " are read");
    }
    int wordStart = -1;
    for (int i = 0; i < formula.length(); i++) {
      char c = formula.charAt(i);
      if (c == '"' || c == '\'') {
        i = closing(formula, i, c);
        wordStart = -1;
      } else if (Character.isLetterOrDigit(c) || c == '_' || c == '.') {
        wordStart = wordStart < 0 ? i : wordStart;
      } else {
        if (c == '(' && wordStart >= 0) {
          requireAllowed(formula, formula.substring(wordStart, i));
        } else if (c == '[' || c == '{' || c == '@' || c == '#') {
          throw refused(formula, "it may not contain " + c + " outside of quotes");
        }
        wordStart = -1;
      }
    }
    return formula;
  }

  private static int closing(String formula, int opening, char quote) {
    int end = formula.indexOf(quote, opening + 1);
    if (end < 0) {
      throw refused(formula, "the " + quote + " is not closed");
    }
    if (quote == '\'' && formula.substring(opening, end).contains("[")) {
      throw refused(formula, "it may not refer to another file");
    }
    return end;
  }

  private static void requireAllowed(String formula, String function) {
    if (!ALLOWED_FUNCTIONS.contains(function)) {
      throw refused(
          formula,
          "the function "
              + function
              + " is none of "
              + ALLOWED_FUNCTIONS.stream().sorted().toList());
    }
  }

  private static IllegalArgumentException refused(String formula, String why) {
    return new IllegalArgumentException("The formula " + formula + " is refused: " + why + ".");
  }

  /** The functions a formula calls, in order, for audits. */
  public static List<String> functions(String formula) {
    String bare = formula.replaceAll("\"[^\"]*\"|'[^']*'", "");
    return java.util.regex.Pattern.compile("([A-Za-z_.][A-Za-z0-9_.]*)\\(")
        .matcher(bare)
        .results()
        .map(found -> found.group(1))
        .toList();
  }
}
