package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The cells of one sheet; the only place that writes cells.
 *
 * <p>Cells are kept as text of the file, not in the library's cell types, of which a large workbook
 * would take many gigabytes; the library writes all else of the sheet.
 */
final class SheetCells {

  private static final int LONGEST_TEXT = 32_767;

  /** Shorter words fit any column. */
  private static final int SHORTEST_WRAPPED = 5;

  private static final String FORMULA_STARTS = "=+-@'";

  private final XSSFSheet sheet;
  private final boolean parsing;
  private final SharedWords words;
  private final SheetRows rows = new SheetRows();
  private final List<WrappedText> wrapped = new ArrayList<>();
  private int lastColumn = -1;

  SheetCells(XSSFSheet sheet, SharedWords words, boolean parsing) {
    this.sheet = sheet;
    this.words = words;
    this.parsing = parsing;
  }

  /** The rows as the file holds them. */
  SheetRows rows() {
    return rows;
  }

  /** The last row in use, -1 if none. */
  int lastRow() {
    return rows.lastRow();
  }

  /** The last column in use, -1 if none. */
  int lastColumn() {
    return lastColumn;
  }

  void blank(int rowIndex, int column, int style) {
    reach(column);
    rows.blank(rowIndex, column, style);
  }

  /** Words as a text cell, whatever they begin with. */
  void text(int rowIndex, int column, CellRole role, Styles styles, String words) {
    textAcross(rowIndex, column, role, styles, words);
    noteWrapping(rowIndex, column, role, words);
  }

  /** Words of a cell that is going to be merged with others, so that its column says nothing. */
  void textAcross(int rowIndex, int column, CellRole role, Styles styles, String words) {
    if (words.length() > LONGEST_TEXT) {
      throw new IllegalArgumentException(
          "Text of "
              + words.length()
              + " characters for one cell of sheet "
              + sheet.getSheetName()
              + "; at most "
              + LONGEST_TEXT
              + " fit. It begins: "
              + words.substring(0, 60));
    }
    boolean formulaLike = !words.isEmpty() && FORMULA_STARTS.indexOf(words.charAt(0)) >= 0;
    reach(column);
    rows.words(
        rowIndex,
        column,
        formulaLike ? styles.ofLiteral(role) : styles.of(role),
        this.words.index(words));
  }

  /** Makes a cell with words lead to another one. */
  void link(int rowIndex, int column, CellAddress target) {
    XSSFHyperlink link =
        sheet.getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress("'" + target.sheet().replace("'", "''") + "'!" + target.relative());
    link.setCellReference(new CellAddress(sheet.getSheetName(), rowIndex, column).relative());
    sheet.addHyperlink(link);
  }

  void number(int rowIndex, int column, int style, double value) {
    reach(column);
    rows.number(rowIndex, column, style, exact(rowIndex, column, value));
  }

  /**
   * A formula with its result.
   *
   * @param formula checked by {@link FormulaRules} before
   */
  void formula(int rowIndex, int column, int style, String formula, double value) {
    check(rowIndex, column, formula);
    rows.formula(rowIndex, column, style, formula, exact(rowIndex, column, value));
  }

  /** A formula whose result is text. */
  void formula(
      int rowIndex, int column, CellRole role, Styles styles, String formula, String words) {
    check(rowIndex, column, formula);
    rows.textFormula(rowIndex, column, styles.of(role), formula, CellText.encoded(words));
    noteWrapping(rowIndex, column, role, words);
  }

  /** Text that may need several lines. */
  List<WrappedText> wrapped() {
    return wrapped;
  }

  private void noteWrapping(int rowIndex, int column, CellRole role, String words) {
    Look look = Looks.of(role);
    if (look.wrap() && words.length() > SHORTEST_WRAPPED) {
      wrapped.add(new WrappedText(rowIndex, column, look.size(), words));
    }
  }

  void height(int rowIndex, double points) {
    rows.height(rowIndex, points);
  }

  private void check(int rowIndex, int column, String formula) {
    reach(column);
    if (parsing) {
      parse(rowIndex, column, formula);
    }
  }

  private void parse(int rowIndex, int column, String formula) {
    XSSFWorkbook workbook = sheet.getWorkbook();
    try {
      FormulaParser.parse(
          formula,
          XSSFEvaluationWorkbook.create(workbook),
          FormulaType.CELL,
          workbook.getSheetIndex(sheet),
          rowIndex);
    } catch (RuntimeException e) {
      throw new IllegalArgumentException(
          "The formula of " + at(rowIndex, column) + " cannot be read: " + formula, e);
    }
  }

  private String exact(int rowIndex, int column, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "The value for " + at(rowIndex, column) + " is " + value + "; a cell needs a number.");
    }
    // Adding zero turns a negative zero into zero.
    return Double.toString(value + 0.0);
  }

  private CellAddress at(int rowIndex, int column) {
    return new CellAddress(sheet.getSheetName(), rowIndex, column);
  }

  private void reach(int column) {
    lastColumn = Math.max(lastColumn, column);
  }
}
