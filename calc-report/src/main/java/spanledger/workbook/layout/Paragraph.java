package spanledger.workbook.layout;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Text that runs over several columns.
 *
 * @param row where it stands
 * @param role its look
 * @param words the text
 */
record Paragraph(int row, CellRole role, String words) {

  /** Longer lines are hard to read. */
  private static final int LINE = 120;

  void spread(XSSFSheet sheet, SheetCells cells, Styles styles, ColumnWidths columns) {
    int last = columns.lastColumnWithin(LINE);
    for (int column = 1; column <= last; column++) {
      cells.blank(row, column, styles.of(role));
    }
    if (last > 0) {
      sheet.addMergedRegion(new CellRangeAddress(row, row, 0, last));
    }
    int size = Looks.of(role).size();
    int lines = WrappedText.lines(words, columns.total(last), size);
    cells.height(row, WrappedText.height(lines, size));
  }
}
