package spanledger.workbook.layout;

/** A4 paper, upright or across, and how small a sheet of some width is printed on it. */
enum Paper {
  UPRIGHT(210, 297),
  ACROSS(297, 210);

  static final double LEFT = 12;
  static final double RIGHT = 10;
  static final double TOP = 18;
  static final double BOTTOM = 15;

  /** Sheets up to this many characters of ordinary text are read with ease upright. */
  private static final int WIDEST_UPRIGHT = 165;

  /** A character of ordinary text is 7 of 96 dots to the inch wide. */
  private static final double MM_PER_CHARACTER = 25.4 * 7 / 96;

  private static final double PT_PER_MM = 72 / 25.4;

  /** Programs differ in how wide they print the columns of a sheet. */
  private static final double SLACK = 0.96;

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The paper for a sheet as wide as so many characters. */
  static Paper of(int characters) {
    return characters <= WIDEST_UPRIGHT ? UPRIGHT : ACROSS;
  }

  /** How small a sheet must be printed to fit so many of its characters across; at most 1. */
  double scale(int characters) {
    double room = (width - LEFT - RIGHT) / MM_PER_CHARACTER;
    return Math.min(1, SLACK * room / Math.max(1, characters));
  }

  /** The height for rows at a scale, in pt of the sheet. */
  double room(double scale) {
    return (height - TOP - BOTTOM) * PT_PER_MM / scale * SLACK;
  }
}
