package spanledger.workbook.layout;

import org.apache.poi.ss.usermodel.PageMargin;
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

  /** Wider columns would leave little room for what moves. */
  private static final int MOST_CHARACTERS_KEPT_IN_SIGHT = 55;

  private int tables;
  private boolean nextFollowsOn;
  private int firstKeptRow;
  private int lastKeptRow;
  private int leadingColumns;
  private @Nullable CellRangeAddress workedHeader;
  private int lastPrintedColumn = Integer.MAX_VALUE;

  /**
   * Keeps the header of a table in sight and repeats it on every page, and so its first columns.
   * With a second table on the sheet only columns are kept: the header of one table must not stand
   * over the other.
   *
   * @param columns how many columns from the left say what a row is about
   */
  void keep(int firstRow, int lastRow, int columns) {
    leadingColumns = tables == 0 ? columns : Math.min(leadingColumns, columns);
    tables++;
    firstKeptRow = firstRow;
    lastKeptRow = lastRow;
  }

  /** Whether the next table must begin a page, because the sheet has one already. */
  boolean tableBeginsPage() {
    boolean begins = tables > 0 && !nextFollowsOn;
    nextFollowsOn = false;
    return begins;
  }

  /** Lets the next table follow on the same page. */
  void nextTableFollowsOn() {
    nextFollowsOn = true;
  }

  /** Repeats the header of worked lines, which is the same for all of them. */
  void repeatWorkedHeader(int row) {
    if (workedHeader == null) {
      workedHeader = new CellRangeAddress(row, row, -1, -1);
    }
  }

  /** Columns to the right of this one are not printed. */
  void printUpTo(int column) {
    lastPrintedColumn = column;
  }

  void apply(
      XSSFSheet sheet, WorkbookIdentity identity, ColumnWidths columns, int lastRow, int lastCol) {
    int lastPrinted = Math.min(lastCol, lastPrintedColumn);
    int keptColumns = keptColumns(columns);
    sheet.setDisplayGridlines(false);
    sheet.setMargin(PageMargin.LEFT, 12 / INCH);
    sheet.setMargin(PageMargin.RIGHT, 10 / INCH);
    sheet.setMargin(PageMargin.TOP, 18 / INCH);
    sheet.setMargin(PageMargin.BOTTOM, 15 / INCH);
    sheet.setMargin(PageMargin.HEADER, 8 / INCH);
    sheet.setMargin(PageMargin.FOOTER, 7 / INCH);
    XSSFPrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(PaperSize.A4_PAPER);
    print.setOrientation(PrintOrientation.LANDSCAPE);
    sheet.setAutobreaks(true);
    sheet.setFitToPage(true);
    print.setFitWidth((short) pagesAcross(columns, lastPrinted, keptColumns));
    print.setFitHeight((short) 0);
    sheet
        .getWorkbook()
        .setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, lastPrinted, 0, lastRow);
    if (keptColumns > 0) {
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, keptColumns - 1));
    }
    if (tables == 1 && workedHeader == null) {
      sheet.setRepeatingRows(new CellRangeAddress(firstKeptRow, lastKeptRow, -1, -1));
      boolean nearTop = lastKeptRow < MOST_ROWS_KEPT_IN_SIGHT;
      sheet.createFreezePane(keptColumns, nearTop ? lastKeptRow + 1 : 0);
    } else if (keptColumns > 0) {
      sheet.createFreezePane(keptColumns, 0);
    } else if (tables == 0 && workedHeader != null) {
      sheet.setRepeatingRows(workedHeader);
    }
    sheet.getHeader().setLeft(small(identity.job()));
    sheet.getHeader().setRight(small(sheet.getSheetName()));
    sheet
        .getFooter()
        .setLeft(small("Not a substitute for a licensed engineer. Local codes govern."));
    sheet.getFooter().setRight("&8 page &P of &N");
  }

  private int keptColumns(ColumnWidths columns) {
    int kept = 0;
    while (workedHeader == null
        && kept < leadingColumns
        && columns.total(kept) <= MOST_CHARACTERS_KEPT_IN_SIGHT) {
      kept++;
    }
    return kept;
  }

  private static int pagesAcross(ColumnWidths columns, int lastPrinted, int keptColumns) {
    int repeated = keptColumns > 0 ? columns.total(keptColumns - 1) : 0;
    int perPage = Math.max(CHARACTERS_PER_PAGE - repeated, 20);
    return Math.max(1, (columns.total(lastPrinted) - repeated + perPage - 1) / perPage);
  }

  /** The blank keeps a leading digit of the text from being read as part of the size. */
  private static String small(String words) {
    return "&8 " + words.replace("&", "&&");
  }
}
