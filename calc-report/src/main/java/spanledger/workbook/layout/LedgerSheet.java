package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** One sheet: blocks below each other, columns as wide as the widest block wants them. */
public final class LedgerSheet {

  private static final double TITLE_HEIGHT = 24;
  private static final double HEADING_HEIGHT = 17;
  private static final int TITLE_ROWS = 3;

  /** Of rows that no other height is set for, in pt: one line of ordinary text. */
  static final double ROW_HEIGHT = 12;

  private final XSSFSheet sheet;
  private final Styles styles;
  private final SheetCells cells;
  private final TreeMap<Integer, Integer> widths = new TreeMap<>();
  private final List<Paragraph> paragraphs = new ArrayList<>();
  private final List<Picture> pictures = new ArrayList<>();
  private final TreeMap<Integer, LineChart> charts = new TreeMap<>();
  private final JudgementMarks judgements = new JudgementMarks();
  private final PageSetup page = new PageSetup();
  private int next;
  private int lastHeading = -2;

  LedgerSheet(XSSFSheet sheet, Styles styles, SharedWords words, boolean parsing) {
    this.sheet = sheet;
    this.styles = styles;
    this.cells = new SheetCells(sheet, words, parsing);
  }

  /** The sheet's name. */
  public String name() {
    return sheet.getSheetName();
  }

  /** The row in which the next block begins, from 0. */
  public int nextRow() {
    return next;
  }

  /** The title of the sheet and, in one line, what it shows. */
  public void title(String title, String purpose) {
    cells.text(next, 0, CellRole.TITLE, styles, title);
    cells.height(next, TITLE_HEIGHT);
    cells.text(next + 1, 0, CellRole.CAPTION, styles, purpose);
    next += 3;
  }

  /** A heading over what follows; both stay on one printed page if they fit on one. */
  public void heading(String words) {
    beginBlock();
    lastHeading = next;
    cells.text(next, 0, CellRole.HEADING, styles, words);
    cells.height(next, HEADING_HEIGHT);
    next++;
  }

  /** A paragraph. */
  public void note(String words) {
    paragraph(CellRole.NOTE, words);
    next++;
  }

  /** Leaves rows empty. */
  public void skip(int rows) {
    next += rows;
  }

  /** Writes a block below what is there, and an empty row after it. */
  public <R> R add(Block<R> block) {
    if (lastHeading != next - 1) {
      beginBlock();
    }
    R result = block.writeTo(this);
    next++;
    return result;
  }

  /**
   * Places a picture below what is there.
   *
   * @param png the picture as a PNG file
   * @param description what it shows, for those who cannot see it
   * @param width of the place it takes, in characters of ordinary text
   */
  public void picture(byte[] png, String description, int width) {
    Picture picture = new Picture(png, description, next, width);
    pictures.add(picture);
    next += picture.rows() + 1;
  }

  /**
   * Draws a chart over rows that were left empty for it.
   *
   * @param row its first row, from 0; it takes {@link LineChart#ROWS}
   */
  public void chart(LineChart chart, int row) {
    charts.put(row, chart);
  }

  /** What follows begins on a new printed page. */
  public void pageBreak() {
    if (next > 0) {
      page.pageBegins(next);
    }
  }

  private void beginBlock() {
    // The title and what stands below it stay together.
    if (next > TITLE_ROWS) {
      page.blockBegins(next);
    }
  }

  /** Prints what fits on the first page, unless rows to print were chosen. */
  public void printFirstPage() {
    page.printFirstPage();
  }

  /** Prints the left columns only, so many. */
  public void printColumns(int columns) {
    page.printUpTo(columns - 1);
  }

  /** Prints only the left columns of a sheet that is too wide for one page. */
  public void printLeftPage() {
    page.printLeftPage();
  }

  /** Prints nothing, unless rows to print were chosen; the sheet has a title. */
  public void printNothing() {
    page.printNothing();
  }

  /** Prints what stands on the sheet so far, and of the rest only what is chosen as well. */
  public void printUpToHere() {
    page.print(0, Math.max(next - 1, 0));
  }

  /** Prints what stands on the sheet from this row on, from 0, under its title. */
  public void printFrom(int row) {
    page.print(row, next - 1);
  }

  SheetCells cells() {
    return cells;
  }

  Styles styles() {
    return styles;
  }

  PageSetup page() {
    return page;
  }

  XSSFSheet library() {
    return sheet;
  }

  /** The name of the sheet's part of the file, as in a zip file. */
  String part() {
    return sheet.getPackagePart().getPartName().getName().substring(1);
  }

  CellAddress at(int row, int column) {
    return new CellAddress(name(), row, column);
  }

  /** Takes the next rows for a block. */
  int take(int rows) {
    int first = next;
    next += rows;
    return first;
  }

  void widen(int column, int characters) {
    widths.merge(column, characters, Math::max);
  }

  /** Text over the whole reading width. */
  void paragraph(CellRole role, String words) {
    cells.textAcross(next, 0, role, styles, words);
    paragraphs.add(new Paragraph(next, role, words));
    next++;
  }

  /** Cells whose words judge, to be marked by what they say. */
  void judged(int firstRow, int lastRow, int column) {
    judgements.add(firstRow, lastRow, column);
  }

  void finish(WorkbookIdentity identity) {
    sheet.setDefaultRowHeightInPoints((float) ROW_HEIGHT);
    ColumnWidths columns = new ColumnWidths(widths);
    columns.applyTo(sheet);
    WrappedText.heights(cells.wrapped(), columns).forEach(cells::height);
    paragraphs.forEach(paragraph -> paragraph.spread(sheet, cells, styles, columns));
    pictures.forEach(picture -> picture.place(sheet, columns));
    charts.forEach((row, chart) -> chart.place(sheet, cells.rows(), row));
    judgements.mark(sheet);
    for (Picture picture : pictures) {
      page.across(picture.lastColumn(columns));
    }
    // The sheet reaches down over its pictures.
    cells.rows().reach(next - 1);
    CellAddress end = at(Math.max(cells.lastRow(), 0), Math.max(cells.lastColumn(), 0));
    sheet.getCTWorksheet().getDimension().setRef("A1:" + end.relative());
    page.apply(sheet, identity, columns, cells.rows());
  }
}
