package spanledger.workbook.layout;

import java.util.Optional;
import spanledger.procedure.CompiledProcedure;

/**
 * Where the numbers of a written {@link ProcedureTable} stand. Rows count from 0 without the
 * header.
 */
public final class ProcedureCells {

  private final TablePlan plan;
  private final String sheet;
  private final int firstRow;

  ProcedureCells(TablePlan plan, String sheet, int firstRow) {
    this.plan = plan;
    this.sheet = sheet;
    this.firstRow = firstRow;
  }

  /** How many rows there are. */
  public int rows() {
    return plan.values().length;
  }

  /** What is worked out. */
  public CompiledProcedure procedure() {
    return plan.table().procedure();
  }

  /** The sheet the table stands on. */
  public String sheet() {
    return sheet;
  }

  /** The value of an input or step. */
  public double value(int row, String symbol) {
    return plan.values()[requireRow(row)][procedure().slot(symbol)];
  }

  /** An input or step of a row; for an inline input the cell it is taken from. */
  public NumberAt number(int row, String symbol) {
    int slot = procedure().slot(symbol);
    requireRow(row);
    CellAddress at =
        plan.hasColumn(slot) ? at(row, plan.column(slot)) : plan.inline().target(slot, row);
    return new NumberAt(at, plan.values()[row][slot]);
  }

  /**
   * An input or step in all rows.
   *
   * @throws IllegalArgumentException if it is an inline input, which has no column
   */
  public CellRange column(String symbol) {
    int slot = procedure().slot(symbol);
    if (!plan.hasColumn(slot)) {
      throw new IllegalArgumentException(
          "The input " + symbol + " is inline; it has no column on " + sheet + ".");
    }
    return wholeColumn(plan.column(slot));
  }

  /** A label of a row. */
  public CellAddress label(int row, int label) {
    return at(requireRow(row), plan.labelColumn(label));
  }

  /** A label in all rows. */
  public CellRange labels(int label) {
    return wholeColumn(plan.labelColumn(label));
  }

  /**
   * The verdict of a row.
   *
   * @throws IllegalArgumentException if the table has none
   */
  public CellAddress verdict(int row) {
    if (plan.table().utilisation().isEmpty()) {
      throw new IllegalArgumentException("The table on " + sheet + " has no verdicts.");
    }
    return at(requireRow(row), plan.verdictColumn());
  }

  /** The sources of the rows' inputs, where they differ from row to row. */
  Optional<CellRange> sources() {
    return plan.sources().perRow()
        ? Optional.of(wholeColumn(plan.sourcesColumn()))
        : Optional.empty();
  }

  TablePlan plan() {
    return plan;
  }

  /** The key column by which inline inputs move. */
  CellRange keys(int key) {
    return wholeColumn(plan.firstKeyColumn() + key);
  }

  private CellRange wholeColumn(int column) {
    return at(0, column).to(at(rows() - 1, column));
  }

  private CellAddress at(int row, int column) {
    return new CellAddress(sheet, firstRow + row, column);
  }

  private int requireRow(int row) {
    if (row < 0 || row >= rows()) {
      throw new IllegalArgumentException(
          "The table on " + sheet + " has no row " + row + ", it has " + rows() + ".");
    }
    return row;
  }
}
