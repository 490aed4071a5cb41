package spanledger.workbook.layout;

import java.util.function.ToIntFunction;
import spanledger.procedure.Expression;
import spanledger.procedure.Reference;
import spanledger.procedure.SpreadsheetFormula;

/**
 * The formula of a step with gaps for the addresses of its symbols, so that the formula is written
 * out only once for all rows of a table.
 */
final class StepFormula {

  /** Characters of the private use area stand for slots. */
  private static final char FIRST_MARK = '\uE000';

  private final String text;

  private StepFormula(String text) {
    this.text = text;
  }

  /**
   * The formula of an expression.
   *
   * @param slots gives the slot of each symbol
   */
  static StepFormula of(Expression expression, ToIntFunction<Reference> slots) {
    String text =
        SpreadsheetFormula.of(
            expression, r -> String.valueOf((char) (FIRST_MARK + slots.applyAsInt(r))));
    FormulaRules.required(text);
    return new StepFormula(text);
  }

  /** Writes the address of a slot in the row at hand. */
  @FunctionalInterface
  interface Addresses {
    void append(StringBuilder out, int slot);
  }

  /** The formula with the addresses put in. */
  String with(Addresses addresses, StringBuilder scratch) {
    scratch.setLength(0);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= FIRST_MARK && c <= '\uF8FF') {
        addresses.append(scratch, c - FIRST_MARK);
      } else {
        scratch.append(c);
      }
    }
    return scratch.toString();
  }
}
