package spanledger.procedure;

import java.util.List;
import spanledger.quantity.Dimension;

/**
 * A value read from a table by straight lines between its rows. Outside the table there is no
 * value.
 *
 * @param rows the table in order of strictly increasing {@code at}; two to fifty rows
 * @param argument where to read
 * @param argumentDimension the dimension of the rows' {@code at}
 * @param dimension the dimension of the rows' {@code value}
 */
public record Interpolation(
    List<Row> rows, Expression argument, Dimension argumentDimension, Dimension dimension)
    implements Expression {

  /** Spreadsheets nest functions up to 64 deep (from memory, confirm); every row nests one. */
  private static final int MOST_ROWS = 50;

  /**
   * One row of the table, in core units.
   *
   * @param at where, with at most 15 significant digits
   * @param value the value there, with at most 15 significant digits
   */
  public record Row(double at, double value) {
    public Row {
      SpreadsheetNumber.require("A number in a table", at);
      SpreadsheetNumber.require("A number in a table", value);
    }
  }

  public Interpolation {
    rows = List.copyOf(rows);
    if (rows.size() < 2 || rows.size() > MOST_ROWS) {
      throw new IllegalArgumentException(
          "A table to interpolate in needs 2 to "
              + MOST_ROWS
              + " rows, found "
              + rows.size()
              + ".");
    }
    for (int i = 1; i < rows.size(); i++) {
      if (!(rows.get(i).at() > rows.get(i - 1).at())) {
        throw new IllegalArgumentException(
            "Rows of a table must increase, found "
                + rows.get(i - 1).at()
                + " then "
                + rows.get(i).at()
                + ".");
      }
    }
    if (!argument.dimension().equals(argumentDimension)) {
      throw new DimensionMismatchException(
          "The table is in "
              + argumentDimension
              + ", but it is read at "
              + SymbolicText.of(argument)
              + " ("
              + argument.dimension()
              + ").");
    }
  }
}
