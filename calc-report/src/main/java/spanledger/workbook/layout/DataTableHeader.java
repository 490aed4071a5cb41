package spanledger.workbook.layout;

import java.util.List;

/** The header of a table: headings, and units, words and sources if any column has them. */
final class DataTableHeader {

  private final LedgerSheet sheet;
  private final List<Column> columns;

  DataTableHeader(LedgerSheet sheet, List<Column> columns) {
    this.sheet = sheet;
    this.columns = columns;
  }

  void write() {
    boolean units = columns.stream().anyMatch(c -> !c.unit().isEmpty());
    boolean words = columns.stream().anyMatch(c -> !c.words().isEmpty());
    boolean sources = columns.stream().anyMatch(c -> c.source().isPresent());
    int headings = sheet.take(1);
    for (int i = 0; i < columns.size(); i++) {
      sheet.widen(i, columns.get(i).width());
      CellRole role = units ? CellRole.COLUMN_SYMBOL : CellRole.COLUMN_ALONE;
      write(headings, i, role, columns.get(i).heading());
    }
    if (units) {
      int row = sheet.take(1);
      for (int i = 0; i < columns.size(); i++) {
        write(row, i, CellRole.COLUMN_UNIT, columns.get(i).unit());
      }
    }
    sheet.page().keep(headings, sheet.nextRow() - 1, leadingTexts());
    if (words) {
      int row = sheet.take(1);
      CellRole role = sources ? CellRole.COLUMN_WORDS : CellRole.COLUMN_LAST;
      for (int i = 0; i < columns.size(); i++) {
        write(row, i, role, columns.get(i).words());
      }
    }
    if (sources) {
      int row = sheet.take(1);
      for (int i = 0; i < columns.size(); i++) {
        String source = columns.get(i).source().map(SourceText::of).orElse("");
        write(row, i, CellRole.COLUMN_SOURCE, source);
      }
    }
  }

  private void write(int row, int column, CellRole role, String text) {
    sheet.cells().text(row, column, role, sheet.styles(), text);
  }

  /** The columns of words at the left, which say what a row is about; two at most stay in sight. */
  private int leadingTexts() {
    int count = 0;
    while (count < Math.min(2, columns.size())
        && columns.get(count).content() == Column.Content.TEXT) {
      count++;
    }
    return count;
  }
}
