package spanledger.workbook.layout;

import org.apache.poi.ss.usermodel.HorizontalAlignment;

/**
 * How a cell looks, apart from its number pattern.
 *
 * @param letters how they are drawn
 * @param fill colour behind them
 * @param edges lines around
 * @param stance where they stand in the cell
 */
record Look(Letters letters, Colour fill, Edges edges, Stance stance) {

  /**
   * How letters are drawn.
   *
   * @param size in pt
   * @param bold bold letters
   * @param italic slanted letters
   * @param ink their colour
   */
  record Letters(int size, boolean bold, boolean italic, Colour ink) {}

  /**
   * Where text stands in its cell.
   *
   * @param align to which side
   * @param wrap whether it goes on in further lines
   * @param indented whether it keeps away from the edge
   * @param low whether it stands at the bottom rather than the top
   */
  record Stance(HorizontalAlignment align, boolean wrap, boolean indented, boolean low) {}

  /** The size of ordinary text, in pt. */
  static final int BODY = 9;

  static final String FONT = "Arial";

  static final Look PLAIN =
      new Look(
          new Letters(BODY, false, false, Colour.INK),
          Colour.PAPER,
          Edges.NONE,
          new Stance(HorizontalAlignment.LEFT, false, false, false));

  int size() {
    return letters.size();
  }

  boolean wrap() {
    return stance.wrap();
  }

  Look sized(int points) {
    return with(new Letters(points, letters.bold(), letters.italic(), letters.ink()));
  }

  Look inBold() {
    return with(new Letters(letters.size(), true, letters.italic(), letters.ink()));
  }

  Look slanted() {
    return with(new Letters(letters.size(), letters.bold(), true, letters.ink()));
  }

  Look in(Colour ink) {
    return with(new Letters(letters.size(), letters.bold(), letters.italic(), ink));
  }

  Look on(Colour other) {
    return new Look(letters, other, edges, stance);
  }

  Look edged(Edges other) {
    return new Look(letters, fill, other, stance);
  }

  Look centred() {
    return aligned(HorizontalAlignment.CENTER);
  }

  Look right() {
    return aligned(HorizontalAlignment.RIGHT);
  }

  Look wrapped() {
    return with(new Stance(stance.align(), true, stance.indented(), stance.low()));
  }

  Look indented() {
    return with(new Stance(stance.align(), stance.wrap(), true, stance.low()));
  }

  Look low() {
    return with(new Stance(stance.align(), stance.wrap(), stance.indented(), true));
  }

  private Look aligned(HorizontalAlignment align) {
    return with(new Stance(align, stance.wrap(), stance.indented(), stance.low()));
  }

  private Look with(Letters other) {
    return new Look(other, fill, edges, stance);
  }

  private Look with(Stance other) {
    return new Look(letters, fill, edges, other);
  }
}
