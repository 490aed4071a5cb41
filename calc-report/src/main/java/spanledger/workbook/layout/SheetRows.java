package spanledger.workbook.layout;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one sheet as text of the file format (ECMA-376 Part 1, 18.3.1.73 and 18.3.1.4), which
 * takes a small part of the memory of the library's cells and is written as it stands.
 */
final class SheetRows {

  private static final String CELL = "<c r=\"";
  private static final String VALUE = "<v>";

  /** A row: its cells one after another, and its height in pt, 0 if it has none of its own. */
  private static final class Row {
    private byte[] cells = {};
    private double height;
    private boolean hidden;
    private int lastColumn = -1;
    private boolean ordered = true;
  }

  private final TreeMap<Integer, Row> rows = new TreeMap<>();

  /** The cells last added, not yet in their row: most cells come row by row. */
  private final StringBuilder fresh = new StringBuilder(4096);

  private @Nullable Row freshRow;
  private int freshIndex = -1;

  /** A cell without content. */
  void blank(int row, int column, int style) {
    begin(row, column, style, "");
    fresh.append("/>");
  }

  /** A cell with a number. */
  void number(int row, int column, int style, String number) {
    begin(row, column, style, "");
    fresh.append('>').append(VALUE).append(number).append("</v></c>");
  }

  /**
   * A cell with words.
   *
   * @param index of the words in the file's table of words
   */
  void words(int row, int column, int style, int index) {
    begin(row, column, style, "s");
    fresh.append('>').append(VALUE).append(index).append("</v></c>");
  }

  /** A formula whose result is a number. */
  void formula(int row, int column, int style, String formula, String number) {
    begin(row, column, style, "");
    result(formula, number);
  }

  /** A formula whose result is words. */
  void textFormula(int row, int column, int style, String formula, String words) {
    begin(row, column, style, "str");
    result(formula, words);
  }

  /** Sets the height of a row, in pt. */
  void height(int row, double points) {
    // The format keeps twentieths.
    row(row).height = Math.round(points * 20) / 20.0;
  }

  /** Hides a row. */
  void hide(int row) {
    row(row).hidden = true;
  }

  /** The last column in use in some rows, -1 if none. */
  int lastColumn(int firstRow, int lastRow) {
    return rows.subMap(firstRow, true, Math.max(firstRow, lastRow), true).values().stream()
        .mapToInt(row -> row.lastColumn)
        .max()
        .orElse(-1);
  }

  /** Makes sure that the sheet has a row, if only an empty one. */
  void reach(int row) {
    if (row > lastRow()) {
      row(row);
    }
  }

  /** The height of a row, in pt. */
  double heightOf(int row) {
    Row known = rows.get(row);
    return known == null || known.height == 0 ? LedgerSheet.ROW_HEIGHT : known.height;
  }

  /** The last row in use, -1 if none. */
  int lastRow() {
    return rows.isEmpty() ? -1 : rows.lastKey();
  }

  /**
   * The number in a cell.
   *
   * @throws IllegalArgumentException if there is none
   */
  double numberAt(int row, int column) {
    settle();
    Row known = rows.get(row);
    for (String cell : known == null ? List.<String>of() : cells(known)) {
      int value = cell.indexOf(VALUE);
      if (columnOf(cell) == column && value >= 0) {
        return Double.parseDouble(
            cell.substring(value + VALUE.length(), cell.indexOf('<', value + 1)));
      }
    }
    throw new IllegalArgumentException(
        "There is no number in " + CellAddress.letters(column) + (row + 1) + ".");
  }

  /** Writes the element that holds all rows. */
  void writeTo(OutputStream out) throws IOException {
    settle();
    out.write("<sheetData>".getBytes(StandardCharsets.UTF_8));
    for (Map.Entry<Integer, Row> entry : rows.entrySet()) {
      Row row = entry.getValue();
      String height = row.height > 0 ? " ht=\"" + row.height + "\" customHeight=\"true\"" : "";
      String hidden = row.hidden ? " hidden=\"true\"" : "";
      String head = "<row r=\"" + (entry.getKey() + 1) + "\"" + hidden + height + ">";
      out.write(head.getBytes(StandardCharsets.UTF_8));
      out.write(row.ordered ? row.cells : ordered(row));
      out.write("</row>".getBytes(StandardCharsets.UTF_8));
    }
    out.write("</sheetData>".getBytes(StandardCharsets.UTF_8));
  }

  private void begin(int rowIndex, int column, int style, String type) {
    Row row = freshRow;
    if (row == null || freshIndex != rowIndex) {
      settle();
      row = row(rowIndex);
      freshRow = row;
      freshIndex = rowIndex;
    }
    row.ordered &= column > row.lastColumn;
    row.lastColumn = Math.max(row.lastColumn, column);
    fresh.append(CELL).append(CellAddress.letters(column)).append(rowIndex + 1).append('"');
    fresh.append(" s=\"").append(style).append('"');
    if (!type.isEmpty()) {
      fresh.append(" t=\"").append(type).append('"');
    }
  }

  private void result(String formula, String value) {
    fresh.append("><f>");
    escaped(formula);
    fresh.append("</f>").append(VALUE);
    escaped(value);
    fresh.append("</v></c>");
  }

  private void escaped(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> fresh.append("&amp;");
        case '<' -> fresh.append("&lt;");
        case '>' -> fresh.append("&gt;");
        default -> fresh.append(c);
      }
    }
  }

  private Row row(int index) {
    return rows.computeIfAbsent(index, i -> new Row());
  }

  /** Puts the fresh cells into their row. */
  private void settle() {
    Row row = freshRow;
    if (row != null && fresh.length() > 0) {
      byte[] added = fresh.toString().getBytes(StandardCharsets.UTF_8);
      byte[] all = Arrays.copyOf(row.cells, row.cells.length + added.length);
      System.arraycopy(added, 0, all, row.cells.length, added.length);
      row.cells = all;
    }
    fresh.setLength(0);
    freshRow = null;
    freshIndex = -1;
  }

  /** The cells of a row from left to right; the last one written to a place counts. */
  private static byte[] ordered(Row row) {
    TreeMap<Integer, String> byColumn = new TreeMap<>();
    cells(row).forEach(cell -> byColumn.put(columnOf(cell), cell));
    return String.join("", byColumn.values()).getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> cells(Row row) {
    String text = new String(row.cells, StandardCharsets.UTF_8);
    List<String> cells = new ArrayList<>();
    int from = 0;
    while (from < text.length()) {
      int next = text.indexOf(CELL, from + 1);
      int to = next < 0 ? text.length() : next;
      cells.add(text.substring(from, to));
      from = to;
    }
    return cells;
  }

  private static int columnOf(String cell) {
    int column = 0;
    for (int i = CELL.length(); Character.isLetter(cell.charAt(i)); i++) {
      column = column * 26 + cell.charAt(i) - 'A' + 1;
    }
    return column - 1;
  }
}
