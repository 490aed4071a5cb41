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

  private static final double LINE_HEIGHT = 12.25;

  void spread(XSSFSheet sheet, SheetCells cells, Styles styles, ColumnWidths columns) {
    int last = columns.lastColumnWithin(LINE);
    for (int column = 1; column <= last; column++) {
      cells.blank(row, column, styles.of(role));
    }
    if (last > 0) {
      sheet.addMergedRegion(new CellRangeAddress(row, row, 0, last));
    }
    cells.height(
        row, 3 + LINE_HEIGHT * Looks.of(role).size() / Look.BODY * lines(columns.total(last)));
  }

  /**
   * Rather one line too many than one too few: programs do not fit the height of merged cells. A
   * character of text is taken to be as wide as a digit, though most are narrower.
   */
  private int lines(int width) {
    int lines = 0;
    for (String line : words.split("\n", -1)) {
      lines += Math.max(1, (int) Math.ceil(line.length() / (double) (width - 3)));
    }
    return lines;
  }
}
