package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;

/**
 * Where printed pages break: so that a short block is not torn, and a long one begins high enough
 * to be worth it.
 *
 * @param height that a page has for rows, in pt of the sheet
 * @param repeated height of the rows that every page but the first repeats, in pt of the sheet
 * @param rowHeight gives the height of each row
 */
record Pages(double height, double repeated, IntToDoubleFunction rowHeight) {

  /** A block up to this part of a page is not torn. */
  private static final double SHORT = 0.45;

  /** A longer block begins where it stands if at least this part of the page is left for it. */
  private static final double WORTH_BEGINNING = 0.3;

  /**
   * The rows after which a page ends.
   *
   * @param starts first rows of blocks, ascending; a break may stand before each
   * @param forced those before which a break must stand
   * @param lastRow the last row printed
   */
  List<Integer> breaks(List<Integer> starts, Set<Integer> forced, int lastRow) {
    List<Integer> breaks = new ArrayList<>();
    double used = 0;
    int row = 0;
    for (int i = 0; i <= starts.size(); i++) {
      int next = i < starts.size() ? Math.min(starts.get(i), lastRow + 1) : lastRow + 1;
      if (i > 0 && next > row && used > 0) {
        double own = total(row, next - 1);
        double left = height - used;
        boolean tears = own > left && (own <= SHORT * height || left < WORTH_BEGINNING * height);
        if (tears || forced.contains(row)) {
          breaks.add(row - 1);
          used = repeated;
        }
      }
      for (; row < next; row++) {
        double one = rowHeight.applyAsDouble(row);
        used = used + one > height ? repeated + one : used + one;
      }
    }
    return breaks;
  }

  /** The last row of the first page, if it begins with row 0. */
  int lastOfFirstPage(int lastRow) {
    double used = 0;
    int row = 0;
    while (row <= lastRow && used + rowHeight.applyAsDouble(row) <= height) {
      used += rowHeight.applyAsDouble(row);
      row++;
    }
    return Math.max(row - 1, 0);
  }

  private double total(int first, int last) {
    double total = 0;
    for (int row = first; row <= last; row++) {
      total += rowHeight.applyAsDouble(row);
    }
    return total;
  }
}
