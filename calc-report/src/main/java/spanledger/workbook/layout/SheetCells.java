package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/**
 * The cells of one sheet; the only place that writes cells.
 *
 * <p>Formula cells are filled below the library's cell type: its setters look up the style and the
 * array formulas of the sheet anew for each cell, which takes a good part of the time of a large
 * table.
 */
final class SheetCells {

  private static final int LONGEST_TEXT = 32_767;

  /** Shorter words fit any column. */
  private static final int SHORTEST_WRAPPED = 5;

  private static final String FORMULA_STARTS = "=+-@'";

  private final XSSFSheet sheet;
  private final boolean parsing;
  private @Nullable XSSFRow row;
  private final List<WrappedText> wrapped = new ArrayList<>();
  private int lastRow = -1;
  private int lastColumn = -1;

  SheetCells(XSSFSheet sheet, boolean parsing) {
    this.sheet = sheet;
    this.parsing = parsing;
  }

  /** The last row in use, -1 if none. */
  int lastRow() {
    return lastRow;
  }

  /** The last column in use, -1 if none. */
  int lastColumn() {
    return lastColumn;
  }

  void blank(int rowIndex, int column, int style) {
    cell(rowIndex, column).getCTCell().setS(style);
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
    XSSFCell cell = cell(rowIndex, column);
    cell.setCellValue(CellText.encoded(words));
    cell.getCTCell().setS(formulaLike ? styles.ofLiteral(role) : styles.of(role));
  }

  void number(int rowIndex, int column, int style, double value) {
    CTCell cell = cell(rowIndex, column).getCTCell();
    cell.setS(style);
    cell.setV(exact(rowIndex, column, value));
  }

  /**
   * A formula with its result.
   *
   * @param formula checked by {@link FormulaRules} before
   */
  void formula(int rowIndex, int column, int style, String formula, double value) {
    CTCell cell = formulaCell(rowIndex, column, style, formula);
    cell.setV(exact(rowIndex, column, value));
  }

  /** A formula whose result is text. */
  void formula(
      int rowIndex, int column, CellRole role, Styles styles, String formula, String words) {
    CTCell cell = formulaCell(rowIndex, column, styles.of(role), formula);
    cell.setT(STCellType.STR);
    cell.setV(CellText.encoded(words));
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
    row(rowIndex).setHeightInPoints((float) points);
  }

  private CTCell formulaCell(int rowIndex, int column, int style, String formula) {
    if (parsing) {
      parse(rowIndex, column, formula);
    }
    CTCell cell = cell(rowIndex, column).getCTCell();
    cell.setS(style);
    cell.addNewF().setStringValue(formula);
    return cell;
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

  private XSSFCell cell(int rowIndex, int column) {
    lastColumn = Math.max(lastColumn, column);
    return row(rowIndex).createCell(column);
  }

  /** Cells mostly come row by row, so the last row is kept at hand. */
  private XSSFRow row(int rowIndex) {
    XSSFRow known = row;
    if (known == null || known.getRowNum() != rowIndex) {
      known = sheet.getRow(rowIndex);
      if (known == null) {
        known = sheet.createRow(rowIndex);
      }
      row = known;
      lastRow = Math.max(lastRow, rowIndex);
    }
    return known;
  }
}
