package spanledger.workbook.layout;

import org.apache.poi.ss.usermodel.BorderStyle;

/**
 * The lines around a cell.
 *
 * @param top above
 * @param right to the right
 * @param bottom below
 * @param left to the left
 * @param colour of all of them
 */
record Edges(
    BorderStyle top, BorderStyle right, BorderStyle bottom, BorderStyle left, Colour colour) {

  static final Edges NONE = box(BorderStyle.NONE, Colour.RULE);

  static Edges box(BorderStyle style, Colour colour) {
    return new Edges(style, style, style, style, colour);
  }

  static Edges below(BorderStyle style, Colour colour) {
    return new Edges(BorderStyle.NONE, BorderStyle.NONE, style, BorderStyle.NONE, colour);
  }

  static Edges above(BorderStyle style, Colour colour) {
    return new Edges(style, BorderStyle.NONE, BorderStyle.NONE, BorderStyle.NONE, colour);
  }

  static Edges left(BorderStyle style, Colour colour) {
    return new Edges(BorderStyle.NONE, BorderStyle.NONE, BorderStyle.NONE, style, colour);
  }
}
