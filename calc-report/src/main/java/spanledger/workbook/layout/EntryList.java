package spanledger.workbook.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import spanledger.workbook.layout.LedgerCell.Text;

/**
 * Values below each other: words, symbol, value, unit, source.
 *
 * @param title over the list; may be empty
 * @param entries the lines
 */
public record EntryList(String title, List<Entry> entries) implements Block<EntryCells> {

  private static final int[] WIDTHS = {38, 12, 15, 10, 60};
  private static final int VALUE = 2;

  public EntryList {
    entries = List.copyOf(entries);
  }

  /** Where the values stand. */
  @Override
  public EntryCells writeTo(LedgerSheet sheet) {
    if (!title.isEmpty()) {
      sheet.heading(title);
    }
    for (int column = 0; column < WIDTHS.length; column++) {
      sheet.widen(column, WIDTHS[column]);
    }
    int first = sheet.take(entries.size());
    LedgerCells writer = new LedgerCells(sheet);
    for (int i = 0; i < entries.size(); i++) {
      write(sheet, writer, first + i, entries.get(i));
    }
    return new EntryCells(this, sheet.at(first, VALUE));
  }

  private static void write(LedgerSheet sheet, LedgerCells writer, int row, Entry entry) {
    SheetCells cells = sheet.cells();
    cells.text(row, 0, CellRole.WRAPPED, sheet.styles(), entry.words());
    cells.text(row, 1, CellRole.SYMBOL, sheet.styles(), entry.symbol());
    @Nullable Double value = LedgerCells.numberOf(entry.cell());
    NumberPattern pattern =
        entry.cell() instanceof LedgerCell.Given given
            ? NumberPattern.asGiven(given.value())
            : NumberPattern.of(entry.dimension(), value == null ? 0 : value);
    writer.write(row, VALUE, entry.cell(), CellRole.TEXT, pattern);
    if (entry.cell() instanceof Text && entry.source().isEmpty()) {
      // Nothing stands to the right, so that long words may run on.
      cells.blank(row, 3, sheet.styles().of(CellRole.UNIT));
      cells.blank(row, 4, sheet.styles().of(CellRole.SOURCE));
      return;
    }
    cells.text(row, 3, CellRole.UNIT, sheet.styles(), entry.unit());
    cells.text(
        row, 4, CellRole.SOURCE, sheet.styles(), entry.source().map(SourceText::of).orElse(""));
  }
}
