package spanledger.verification.workbook;

import org.apache.poi.ss.util.CellReference;

/**
 * A cell as it stands in an xlsx file.
 *
 * @param sheet the sheet's name
 * @param row from 0
 * @param column from 0
 * @param formula without the equals sign; empty if it has none
 * @param kind what it shows
 * @param text what it shows, as text
 * @param style index of its style
 */
record BookCell(
    String sheet, int row, int column, String formula, Kind kind, String text, int style) {

  /** What a cell shows. */
  enum Kind {
    NOTHING,
    NUMBER,
    WORDS,
    TRUTH,
    ERROR
  }

  boolean isFormula() {
    return !formula.isEmpty();
  }

  boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  /** A number that stands as it is. */
  boolean isConstant() {
    return isNumber() && !isFormula();
  }

  double number() {
    return Double.parseDouble(text);
  }

  String reference() {
    return CellReference.convertNumToColString(column) + (row + 1);
  }

  /** For messages. */
  String words() {
    return sheet + "!" + reference() + (isFormula() ? " =" + formula : "") + " shows " + text;
  }
}
