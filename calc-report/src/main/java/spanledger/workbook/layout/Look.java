package spanledger.workbook.layout;

import org.apache.poi.ss.usermodel.HorizontalAlignment;

/**
 * How a cell looks, apart from its number pattern.
 *
 * @param size of the letters, in pt
 * @param bold bold letters
 * @param italic slanted letters
 * @param ink colour of the letters
 * @param fill colour behind them
 * @param edges lines around
 * @param align where text stands
 * @param wrap whether text goes on in further lines
 */
record Look(
    int size,
    boolean bold,
    boolean italic,
    Colour ink,
    Colour fill,
    Edges edges,
    HorizontalAlignment align,
    boolean wrap) {

  /** The size of ordinary text, in pt. */
  static final int BODY = 9;

  static final String FONT = "Arial";

  static final Look PLAIN =
      new Look(
          BODY,
          false,
          false,
          Colour.INK,
          Colour.PAPER,
          Edges.NONE,
          HorizontalAlignment.LEFT,
          false);

  Look sized(int points) {
    return new Look(points, bold, italic, ink, fill, edges, align, wrap);
  }

  Look inBold() {
    return new Look(size, true, italic, ink, fill, edges, align, wrap);
  }

  Look slanted() {
    return new Look(size, bold, true, ink, fill, edges, align, wrap);
  }

  Look in(Colour other) {
    return new Look(size, bold, italic, other, fill, edges, align, wrap);
  }

  Look on(Colour other) {
    return new Look(size, bold, italic, ink, other, edges, align, wrap);
  }

  Look edged(Edges other) {
    return new Look(size, bold, italic, ink, fill, other, align, wrap);
  }

  Look centred() {
    return new Look(size, bold, italic, ink, fill, edges, HorizontalAlignment.CENTER, wrap);
  }

  Look right() {
    return new Look(size, bold, italic, ink, fill, edges, HorizontalAlignment.RIGHT, wrap);
  }

  Look wrapped() {
    return new Look(size, bold, italic, ink, fill, edges, align, true);
  }
}
