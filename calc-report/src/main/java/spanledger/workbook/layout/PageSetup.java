package spanledger.workbook.layout;

import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintOrientation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.jspecify.annotations.Nullable;

/** How a sheet is printed and what stays in sight when one moves about in it. */
final class PageSetup {

  /** A4 across holds about 150 characters of ordinary text; this many are still read with ease. */
  private static final int CHARACTERS_PER_PAGE = 195;

  private static final int MOST_ROWS_KEPT_IN_SIGHT = 8;
  private static final double INCH = 25.4;

  private int firstKeptRow = -1;
  private int lastKeptRow;
  private int keptColumns;
  private @Nullable CellRangeAddress repeated;
  private int lastPrintedColumn = Integer.MAX_VALUE;

  /**
   * Keeps the header of a table in sight and repeats it on every page. Only the first table of a
   * sheet can have that, and only if it begins near the top.
   */
  void keep(int firstRow, int lastRow, int columns) {
    if (firstKeptRow < 0 && lastRow < MOST_ROWS_KEPT_IN_SIGHT) {
      firstKeptRow = firstRow;
      lastKeptRow = lastRow;
      keptColumns = columns;
    }
  }

  /** Repeats rows on every page without keeping them in sight. */
  void repeat(int firstRow, int lastRow) {
    repeated = new CellRangeAddress(firstRow, lastRow, -1, -1);
  }

  /** Columns to the right of this one are not printed. */
  void printUpTo(int column) {
    lastPrintedColumn = column;
  }

  void apply(
      XSSFSheet sheet, WorkbookIdentity identity, ColumnWidths columns, int lastRow, int lastCol) {
    int lastPrinted = Math.min(lastCol, lastPrintedColumn);
    sheet.setDisplayGridlines(false);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.LEFT, 12 / INCH);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.RIGHT, 10 / INCH);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.TOP, 18 / INCH);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.BOTTOM, 15 / INCH);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.HEADER, 8 / INCH);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.FOOTER, 7 / INCH);
    XSSFPrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(PaperSize.A4_PAPER);
    print.setOrientation(PrintOrientation.LANDSCAPE);
    sheet.setAutobreaks(true);
    sheet.setFitToPage(true);
    print.setFitWidth((short) pagesAcross(columns, lastPrinted));
    print.setFitHeight((short) 0);
    sheet
        .getWorkbook()
        .setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, lastPrinted, 0, lastRow);
    if (firstKeptRow >= 0) {
      sheet.createFreezePane(keptColumns, lastKeptRow + 1);
      repeated = new CellRangeAddress(firstKeptRow, lastKeptRow, -1, -1);
      if (keptColumns > 0) {
        sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, keptColumns - 1));
      }
    }
    if (repeated != null) {
      sheet.setRepeatingRows(repeated);
    }
    sheet.getHeader().setLeft(small(identity.job()));
    sheet.getHeader().setRight(small(sheet.getSheetName()));
    sheet
        .getFooter()
        .setLeft(small("Not a substitute for a licensed engineer. Local codes govern."));
    sheet.getFooter().setRight("&8 page &P of &N");
  }

  private int pagesAcross(ColumnWidths columns, int lastPrinted) {
    int repeated = keptColumns > 0 ? columns.total(keptColumns - 1) : 0;
    int perPage = Math.max(CHARACTERS_PER_PAGE - repeated, 20);
    return Math.max(1, (columns.total(lastPrinted) - repeated + perPage - 1) / perPage);
  }

  /** The blank keeps a leading digit of the text from being read as part of the size. */
  private static String small(String words) {
    return "&8 " + words.replace("&", "&&");
  }
}
