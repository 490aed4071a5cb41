package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintOrientation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.jspecify.annotations.Nullable;

/** What of a sheet is printed and how, and what stays in sight when one moves about in it. */
final class PageSetup {

  /** As wide as this, in characters of ordinary text, a sheet is still read on one page. */
  private static final int WIDEST_ON_ONE_PAGE = 270;

  /** Wider sheets are printed on pages that hold this many characters each. */
  private static final int CHARACTERS_PER_PAGE = 240;

  /** The line under the title of a sheet runs over columns; it shall not be cut off. */
  private static final int TITLE_CHARACTERS = 110;

  /**
   * The row below the title. The file format cannot say that nothing of a sheet is printed, but
   * what is hidden is not.
   */
  private static final int EMPTY_ROW = 2;

  private static final int MOST_ROWS_KEPT_IN_SIGHT = 8;
  private static final double INCH = 25.4;

  /** Wider columns would leave little room for what moves. */
  private static final int MOST_CHARACTERS_KEPT_IN_SIGHT = 55;

  private int tables;
  private int firstKeptRow;
  private int lastKeptRow;
  private int leadingColumns;
  private @Nullable CellRangeAddress workedHeader;
  private int lastPrintedColumn = Integer.MAX_VALUE;
  private final TreeSet<Integer> blocks = new TreeSet<>();
  private final Set<Integer> pageStarts = new HashSet<>();
  private boolean across;
  private boolean leftPage;
  private boolean hidesEmptyRow;
  private int coveredColumns;
  private PrintedRows printed = PrintedRows.ALL;

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

  /** What begins in a row is kept on one page if it fits on one. */
  void blockBegins(int row) {
    blocks.add(row);
  }

  /** What begins in a row begins a page. */
  void pageBegins(int row) {
    blocks.add(row);
    pageStarts.add(row);
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

  /** Prints some rows only, with those that were chosen before. */
  void print(int firstRow, int lastRow) {
    printed = printed.and(firstRow, lastRow);
  }

  /** Prints the first page only, if no rows were chosen. */
  void printFirstPage() {
    if (printed.equals(PrintedRows.ALL)) {
      printed = PrintedRows.FIRST_PAGE;
    }
  }

  /** Of a sheet that is too wide for one page prints what stands on the left one. */
  void printLeftPage() {
    leftPage = true;
  }

  /** Prints nothing of a sheet, if no rows were chosen. */
  void printNothing() {
    if (printed.equals(PrintedRows.ALL)) {
      printed = PrintedRows.ALL.and(EMPTY_ROW, EMPTY_ROW);
      hidesEmptyRow = true;
    }
  }

  /** Prints on paper that lies across, and up to this column at least. */
  void across(int column) {
    across = true;
    coveredColumns = Math.max(coveredColumns, column);
  }

  void apply(XSSFSheet sheet, WorkbookIdentity identity, ColumnWidths columns, SheetRows rows) {
    int lastRow = Math.max(rows.lastRow(), 0);
    if (hidesEmptyRow) {
      rows.hide(EMPTY_ROW);
    }
    int lastPrinted = lastPrinted(columns, rows, lastRow);
    int keptColumns = keptColumns(columns);
    int characters = columns.total(lastPrinted);
    Paper paper = across ? Paper.ACROSS : Paper.of(characters);
    margins(sheet);
    sheet.setDisplayGridlines(false);
    XSSFPrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(PaperSize.A4_PAPER);
    print.setOrientation(
        paper == Paper.UPRIGHT ? PrintOrientation.PORTRAIT : PrintOrientation.LANDSCAPE);
    sheet.setAutobreaks(true);
    sheet.setFitToPage(true);
    double scale = paper.scale(characters);
    double repeated = total(rows, repeatedRows(lastRow));
    Pages pages = new Pages(paper.room(scale), repeated, rows::heightOf);
    List<PrintedRows.Span> spans = printed.within(pages, lastRow);
    print.setFitWidth(
        (short) (printed.firstPage() ? 1 : pagesAcross(columns, lastPrinted, keptColumns)));
    print.setFitHeight((short) (printed.firstPage() ? 1 : 0));
    printArea(sheet, spans, lastPrinted);
    keepInSight(sheet, keptColumns);
    if (!hidesEmptyRow && spans.get(spans.size() - 1).first() > 0) {
      // The title stands over rows from further down.
      sheet.setRepeatingRows(new CellRangeAddress(0, 1, -1, -1));
    }
    if (printed.equals(PrintedRows.ALL) && characters <= WIDEST_ON_ONE_PAGE) {
      breakPages(sheet, print, pages, scale, lastRow);
    }
    boolean cut = leftPage && lastPrinted < rows.lastColumn(0, lastRow);
    words(sheet, identity, cut || !spans.equals(List.of(new PrintedRows.Span(0, lastRow))));
  }

  /** As many columns as the printed rows have, but enough for the title. */
  private int lastPrinted(ColumnWidths columns, SheetRows rows, int lastRow) {
    int last = 0;
    boolean some = !printed.spans().isEmpty();
    for (PrintedRows.Span span :
        some ? printed.spans() : List.of(new PrintedRows.Span(0, lastRow))) {
      last = Math.max(last, rows.lastColumn(span.first(), span.last()));
    }
    last = Math.min(Math.max(last, coveredColumns), lastPrintedColumn);
    while (columns.total(last) < TITLE_CHARACTERS && last < lastPrintedColumn) {
      last++;
    }
    while ((printed.firstPage() || leftPage)
        && last > 0
        && columns.total(last) > WIDEST_ON_ONE_PAGE) {
      last--;
    }
    return last;
  }

  private static void printArea(XSSFSheet sheet, List<PrintedRows.Span> spans, int lastColumn) {
    List<String> areas = new ArrayList<>();
    for (PrintedRows.Span span : spans) {
      CellAddress first = new CellAddress(sheet.getSheetName(), span.first(), 0);
      areas.add(
          first.fixed()
              + ":"
              + new CellAddress(sheet.getSheetName(), span.last(), lastColumn).fixed());
    }
    sheet
        .getWorkbook()
        .setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), String.join(",", areas));
  }

  private void breakPages(
      XSSFSheet sheet, XSSFPrintSetup print, Pages pages, double scale, int lastRow) {
    List<Integer> breaks = pages.breaks(new ArrayList<>(blocks), pageStarts, lastRow);
    if (!breaks.isEmpty()) {
      // Some programs break pages nowhere else if a sheet is fitted to pages.
      sheet.setFitToPage(false);
      print.setScale((short) Math.floor(100 * scale));
      breaks.forEach(sheet::setRowBreak);
    }
  }

  private void keepInSight(XSSFSheet sheet, int keptColumns) {
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
  }

  private @Nullable CellRangeAddress repeatedRows(int lastRow) {
    if (tables == 1 && workedHeader == null) {
      return new CellRangeAddress(firstKeptRow, Math.min(lastKeptRow, lastRow), -1, -1);
    }
    return tables == 0 ? workedHeader : null;
  }

  private static double total(SheetRows heights, @Nullable CellRangeAddress rows) {
    double total = 0;
    if (rows != null) {
      for (int row = rows.getFirstRow(); row <= rows.getLastRow(); row++) {
        total += heights.heightOf(row);
      }
    }
    return total;
  }

  private static void margins(XSSFSheet sheet) {
    sheet.setMargin(PageMargin.LEFT, Paper.LEFT / INCH);
    sheet.setMargin(PageMargin.RIGHT, Paper.RIGHT / INCH);
    sheet.setMargin(PageMargin.TOP, Paper.TOP / INCH);
    sheet.setMargin(PageMargin.BOTTOM, Paper.BOTTOM / INCH);
    sheet.setMargin(PageMargin.HEADER, 8 / INCH);
    sheet.setMargin(PageMargin.FOOTER, 7 / INCH);
  }

  private static void words(XSSFSheet sheet, WorkbookIdentity identity, boolean partly) {
    sheet.getHeader().setLeft(small(identity.job() + ": " + identity.title()));
    sheet.getHeader().setRight(small(sheet.getSheetName() + (partly ? ", in part" : "")));
    sheet
        .getFooter()
        .setLeft(small("Not a substitute for a licensed engineer. Local codes govern."));
    String file = identity.digest().isEmpty() ? "" : "file SHA-256 " + identity.digest() + ", ";
    sheet.getFooter().setRight(small(file) + "page &P of &N");
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
    if (columns.total(lastPrinted) <= WIDEST_ON_ONE_PAGE) {
      return 1;
    }
    int repeated = keptColumns > 0 ? columns.total(keptColumns - 1) : 0;
    int perPage = Math.max(CHARACTERS_PER_PAGE - repeated, 20);
    return Math.max(1, (columns.total(lastPrinted) - repeated + perPage - 1) / perPage);
  }

  /** The blank keeps a leading digit of the text from being read as part of the size. */
  private static String small(String words) {
    return "&8 " + words.replace("&", "&&");
  }
}
