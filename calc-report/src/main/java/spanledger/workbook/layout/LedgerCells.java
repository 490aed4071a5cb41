package spanledger.workbook.layout;

import org.jspecify.annotations.Nullable;

/** Writes cells of tables and lists in the look of their kind. */
final class LedgerCells {

  private final LedgerSheet sheet;

  LedgerCells(LedgerSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * Writes a cell.
   *
   * @param textRole the look if it holds words
   * @param pattern how a number is shown
   */
  void write(int row, int column, LedgerCell cell, CellRole textRole, NumberPattern pattern) {
    SheetCells cells = sheet.cells();
    Styles styles = sheet.styles();
    if (cell instanceof LedgerCell.Blank) {
      cells.blank(row, column, styles.of(textRole));
    } else if (cell instanceof LedgerCell.Text c) {
      cells.text(row, column, textRole, styles, c.words());
    } else if (cell instanceof LedgerCell.LiveText c) {
      String formula = FormulaRules.required(c.formula());
      cells.formula(row, column, textRole, styles, formula, c.words());
    } else if (cell instanceof LedgerCell.Link c) {
      cells.text(row, column, CellRole.LINK, styles, c.words());
      cells.link(row, column, new CellAddress(c.sheet(), 0, 0));
    } else if (cell instanceof LedgerCell.Given c) {
      cells.number(row, column, styles.of(CellRole.GIVEN, pattern), c.value());
    } else if (cell instanceof LedgerCell.Count c) {
      cells.number(row, column, styles.of(CellRole.COUNT, NumberPattern.WHOLE), c.value());
    } else if (cell instanceof LedgerCell.Solved c) {
      cells.number(row, column, styles.of(CellRole.SOLVED, pattern), c.value());
    } else if (cell instanceof LedgerCell.Live c) {
      live(row, column, CellRole.FORMULA, pattern, FormulaRules.required(c.formula()), c.value());
    } else if (cell instanceof LedgerCell.Linked c) {
      String formula = c.target().from(sheet.name());
      live(row, column, CellRole.FORMULA, pattern, formula, c.target().value());
    } else if (cell instanceof LedgerCell.Residual c) {
      String formula = FormulaRules.required(c.formula());
      live(row, column, CellRole.RESIDUAL, NumberPattern.RESIDUAL, formula, c.value());
    } else if (cell instanceof LedgerCell.Judged c) {
      cells.text(row, column, CellRole.OUTCOME, styles, c.outcome().words());
      sheet.judged(row, row, column);
    } else if (cell instanceof LedgerCell.LiveJudged c) {
      String formula = FormulaRules.required(c.formula());
      cells.formula(row, column, CellRole.OUTCOME, styles, formula, c.outcome().words());
      sheet.judged(row, row, column);
    }
  }

  private void live(
      int row, int column, CellRole role, NumberPattern pattern, String formula, double value) {
    sheet.cells().formula(row, column, sheet.styles().of(role, pattern), formula, value);
  }

  /** The number in a cell, or null if it holds none. */
  static @Nullable Double numberOf(LedgerCell cell) {
    if (cell instanceof LedgerCell.Given c) {
      return c.value();
    } else if (cell instanceof LedgerCell.Solved c) {
      return c.value();
    } else if (cell instanceof LedgerCell.Live c) {
      return c.value();
    } else if (cell instanceof LedgerCell.Linked c) {
      return c.target().value();
    } else if (cell instanceof LedgerCell.Residual c) {
      return c.value();
    } else if (cell instanceof LedgerCell.Count c) {
      return (double) c.value();
    }
    return null;
  }
}
