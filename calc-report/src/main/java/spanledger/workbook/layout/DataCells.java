package spanledger.workbook.layout;

import org.jspecify.annotations.Nullable;

/** Where the cells of a written {@link DataTable} stand. Rows count from 0 without the header. */
public final class DataCells {

  private final DataTable table;
  private final CellAddress first;

  DataCells(DataTable table, CellAddress first) {
    this.table = table;
    this.first = first;
  }

  /** How many rows there are. */
  public int rows() {
    return table.rows().size();
  }

  /** The cell in a row, by the column's heading. */
  public CellAddress address(int row, String heading) {
    if (row < 0 || row >= rows()) {
      throw new IllegalArgumentException(
          "The table \"" + table.title() + "\" has no row " + row + ", it has " + rows() + ".");
    }
    return first.moved(row, table.indexOf(heading));
  }

  /**
   * The number in a row, by the column's heading.
   *
   * @throws IllegalArgumentException if there is no number in the cell
   */
  public NumberAt number(int row, String heading) {
    CellAddress at = address(row, heading);
    @Nullable Double value =
        LedgerCells.numberOf(table.rows().get(row).get(table.indexOf(heading)));
    if (value == null) {
      throw new IllegalArgumentException("There is no number in " + at + " (" + heading + ").");
    }
    return new NumberAt(at, value);
  }

  /** All cells of a column. */
  public CellRange column(String heading) {
    return address(0, heading).to(address(rows() - 1, heading));
  }
}
