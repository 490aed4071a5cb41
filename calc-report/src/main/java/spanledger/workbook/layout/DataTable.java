package spanledger.workbook.layout;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A table whose cells are of any kind.
 *
 * <p>Given numbers need a source: their column's, or their row's in a column headed {@value
 * #SOURCE_HEADING}.
 *
 * <p>A live formula may name cells of its own row by their headings in braces: {@code {F_x}*{L}}.
 *
 * @param title over the table; may be empty
 * @param columns the columns from left to right
 * @param rows the cells of each row, as many as there are columns
 */
public record DataTable(String title, List<Column> columns, List<List<LedgerCell>> rows)
    implements Block<DataCells> {

  /** The heading of a column of words that gives the source of each row's numbers. */
  public static final String SOURCE_HEADING = "source";

  public DataTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    if (columns.stream().map(Column::heading).distinct().count() < columns.size()) {
      throw new IllegalArgumentException("The table \"" + title + "\" has a heading twice.");
    }
    requireFullRows(title, columns, rows);
    requireSources(title, columns, rows);
  }

  private static void requireFullRows(
      String title, List<Column> columns, List<List<LedgerCell>> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).size() != columns.size()) {
        throw new IllegalArgumentException(
            "Row "
                + (i + 1)
                + " of the table \""
                + title
                + "\" has "
                + rows.get(i).size()
                + " cells for "
                + columns.size()
                + " columns.");
      }
    }
  }

  private static void requireSources(
      String title, List<Column> columns, List<List<LedgerCell>> rows) {
    if (find(columns, SOURCE_HEADING).isPresent()) {
      return;
    }
    for (int i = 0; i < columns.size(); i++) {
      int column = i;
      if (columns.get(i).source().isEmpty()
          && rows.stream().anyMatch(row -> row.get(column) instanceof LedgerCell.Given)) {
        throw new IllegalArgumentException(
            "The given numbers under "
                + columns.get(i).heading()
                + " in the table \""
                + title
                + "\" need a source: of the column, or in a column headed \""
                + SOURCE_HEADING
                + "\".");
      }
    }
  }

  /** Where the table's cells stand. */
  @Override
  public DataCells writeTo(LedgerSheet sheet) {
    if (!title.isEmpty()) {
      sheet.heading(title);
    }
    new DataTableHeader(sheet, columns).write();
    int firstRow = sheet.take(rows.size());
    NumberPattern[] patterns = new NumberPattern[columns.size()];
    for (int i = 0; i < patterns.length; i++) {
      patterns[i] = NumberPattern.of(columns.get(i).dimension(), greatest(i));
    }
    LedgerCells writer = new LedgerCells(sheet);
    for (int r = 0; r < rows.size(); r++) {
      RowPlaceholders placeholders = new RowPlaceholders(columns, firstRow + r);
      for (int c = 0; c < patterns.length; c++) {
        LedgerCell cell = placeholders.resolved(rows.get(r).get(c));
        NumberPattern pattern = patterns[c];
        @Nullable Double value = LedgerCells.numberOf(cell);
        if (columns.get(c).content() == Column.Content.MIXED && value != null) {
          pattern = NumberPattern.asGiven(value);
        }
        writer.write(firstRow + r, c, cell, role(columns.get(c)), pattern);
      }
    }
    return new DataCells(this, sheet.at(firstRow, 0));
  }

  private double greatest(int column) {
    double greatest = 0;
    for (List<LedgerCell> row : rows) {
      @Nullable Double value = LedgerCells.numberOf(row.get(column));
      greatest = value == null ? greatest : Math.max(greatest, Math.abs(value));
    }
    return greatest;
  }

  private static CellRole role(Column column) {
    return column.content() == Column.Content.WRAPPED ? CellRole.WRAPPED : CellRole.TEXT;
  }

  /** The place of a column by its heading. */
  int indexOf(String heading) {
    return find(columns, heading)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "The table \"" + title + "\" has no column " + heading + "."));
  }

  static Optional<Integer> find(List<Column> columns, String heading) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).heading().equals(heading)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }
}
