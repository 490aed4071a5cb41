package spanledger.workbook.layout;

/** Writes the cells of inputs in the look of their kind. */
final class InputCells {

  private InputCells() {}

  static void write(
      LedgerSheet sheet, int row, int column, InputCell input, NumberPattern pattern) {
    SheetCells cells = sheet.cells();
    Styles styles = sheet.styles();
    if (input instanceof InputCell.Literal) {
      cells.number(row, column, styles.of(CellRole.GIVEN, pattern), input.value());
    } else if (input instanceof InputCell.Solved) {
      cells.number(row, column, styles.of(CellRole.SOLVED, pattern), input.value());
    } else if (input instanceof InputCell.Linked linked) {
      String formula = linked.target().from(sheet.name());
      cells.formula(row, column, styles.of(CellRole.FORMULA, pattern), formula, input.value());
    } else if (input instanceof InputCell.Live live) {
      String formula = FormulaRules.required(live.formula());
      cells.formula(row, column, styles.of(CellRole.FORMULA, pattern), formula, input.value());
    }
  }
}
