package spanledger.workbook.layout;

/**
 * The place of one cell.
 *
 * @param sheet the sheet's name, not quoted
 * @param row the row, from 0
 * @param column the column, from 0
 */
public record CellAddress(String sheet, int row, int column) {

  private static final int ROWS = 1_048_576;
  private static final int COLUMNS = 16_384;

  public CellAddress {
    if (row < 0 || row >= ROWS || column < 0 || column >= COLUMNS) {
      throw new IllegalArgumentException(
          "Sheet "
              + sheet
              + " has no cell in row "
              + (row + 1)
              + ", column "
              + (column + 1)
              + "; a sheet has "
              + ROWS
              + " rows and "
              + COLUMNS
              + " columns.");
    }
  }

  /** From any sheet, for example {@code 'End forces'!$D$7}. */
  public String absolute() {
    return SheetName.inFormula(sheet) + "!" + fixed();
  }

  /** Within its own sheet and kept when the formula is copied, for example {@code $D$7}. */
  public String fixed() {
    return "$" + letters(column) + "$" + (row + 1);
  }

  /** Within its own sheet, moving with the formula when it is copied, for example {@code D7}. */
  public String relative() {
    return letters(column) + (row + 1);
  }

  /** As a formula on the given sheet refers to it: {@link #fixed} there, else {@link #absolute}. */
  public String from(String formulaSheet) {
    return formulaSheet.equals(sheet) ? fixed() : absolute();
  }

  /** The cell so many rows below and columns to the right. */
  public CellAddress moved(int rows, int columns) {
    return new CellAddress(sheet, row + rows, column + columns);
  }

  /** The range from this cell to the other one, both included, on one sheet. */
  public CellRange to(CellAddress last) {
    return new CellRange(this, last);
  }

  /** The letters of a column, from 0: A, B, .. Z, AA. */
  static String letters(int column) {
    StringBuilder text = new StringBuilder(3);
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
      text.append((char) ('A' + (rest - 1) % 26));
    }
    return text.reverse().toString();
  }

  @Override
  public String toString() {
    return absolute();
  }
}
