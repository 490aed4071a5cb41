package spanledger.workbook.layout;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Text in a cell that may need several lines. Programs differ in when they fit the height of a row,
 * so it is set.
 *
 * @param row the cell's row
 * @param column the cell's column
 * @param size of the letters, in pt
 * @param words the text
 */
record WrappedText(int row, int column, int size, String words) {

  private static final double LINE_HEIGHT_PER_SIZE = 1.36;
  private static final double PADDING = 2;

  /** What the edges of a cell take of its width, in digits. */
  private static final double EDGES = 0.7;

  /** For fonts that are wider than the usual ones. */
  private static final double SLACK = 1.06;

  /** The heights of the rows that need more than one line. */
  static Map<Integer, Double> heights(List<WrappedText> texts, ColumnWidths columns) {
    Map<Integer, Double> heights = new TreeMap<>();
    for (WrappedText text : texts) {
      int lines = lines(text.words, columns.of(text.column), text.size);
      if (lines > 1) {
        heights.merge(text.row, height(lines, text.size), Math::max);
      }
    }
    return heights;
  }

  /** The height of so many lines, in pt. */
  static double height(int lines, int size) {
    return PADDING + LINE_HEIGHT_PER_SIZE * size * lines;
  }

  /**
   * How many lines the text takes, rather one too many than one too few.
   *
   * @param width in digits of ordinary text
   */
  static int lines(String words, int width, int size) {
    double room = Math.max(1, (width - EDGES) * Look.BODY / size / SLACK);
    int lines = 0;
    for (String paragraph : words.split("\n", -1)) {
      lines++;
      double used = 0;
      for (String word : paragraph.split("(?<= )", -1)) {
        double length = LetterWidths.of(word.stripTrailing());
        if (used > 0 && used + length > room) {
          lines++;
          used = 0;
        }
        used += LetterWidths.of(word);
        // A word longer than the line is broken anywhere.
        for (; length > room; length -= room) {
          lines++;
          used -= room;
        }
      }
    }
    return lines;
  }
}
