package spanledger.workbook.layout;

import java.util.Optional;
import java.util.function.Function;
import spanledger.procedure.Expression;
import spanledger.procedure.NumericText;
import spanledger.procedure.Reference;

/** A step's formula with numbers put in, as text that stays live. */
final class NumbersFormula {

  private static final String START = "= ";
  private static final char MARK = '\uE000';
  private static final int LONGEST_LITERAL = 250;
  private static final int LONGEST_FORMULA = 8000;

  private NumbersFormula() {}

  /**
   * The text that the live formula gives.
   *
   * @param numbers gives the text of each symbol's number
   */
  static String text(Expression expression, Function<Reference, String> numbers) {
    return START + NumericText.with(expression, numbers);
  }

  /**
   * The live formula: pieces of text joined with the cells that hold the numbers as text.
   *
   * @param cells gives the address of the cell with each symbol's number as text
   * @return empty if it is too long for a cell
   */
  static Optional<String> formula(Expression expression, Function<Reference, String> cells) {
    String marked = START + NumericText.with(expression, r -> MARK + cells.apply(r) + MARK);
    StringBuilder formula = new StringBuilder();
    String[] pieces = marked.split(String.valueOf(MARK), -1);
    for (int i = 0; i < pieces.length; i++) {
      boolean address = i % 2 == 1;
      if (address) {
        formula.append(formula.isEmpty() ? "" : "&").append(pieces[i]);
      } else {
        appendLiteral(formula, pieces[i]);
      }
    }
    return formula.length() > LONGEST_FORMULA ? Optional.empty() : Optional.of(formula.toString());
  }

  private static void appendLiteral(StringBuilder formula, String piece) {
    for (int from = 0; from < piece.length(); from += LONGEST_LITERAL) {
      String part = piece.substring(from, Math.min(piece.length(), from + LONGEST_LITERAL));
      formula.append(formula.isEmpty() ? "" : "&").append('"').append(part).append('"');
    }
  }
}
