package spanledger.verification.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Sheets that work out an outline against their recalculation by another program. */
final class OutlineRecalculation {

  /** Numbers are compared to this part of their size. */
  private static final double AGREEMENT = 1e-9;

  /**
   * Near zero, to the same part of what a number of its unit is in these sections, which are some
   * 100 mm across.
   */
  private static final Map<String, Double> SCALES =
      Map.of("mm", 1e2, "mm²", 1e4, "mm³", 1e6, "mm⁴", 1e8, "mm⁶", 1e12, "rad", 1.0, "1/mm²", 1e-4);

  private final List<String> disagreements = new ArrayList<>();
  private int compared;

  /**
   * Compares.
   *
   * @param sheets which of them
   */
  OutlineRecalculation(Book ours, Book theirs, Predicate<String> sheets) {
    for (String sheet : ours.names()) {
      if (sheets.test(sheet)) {
        for (BookCell cell : ours.sheet(sheet)) {
          if (cell.isFormula()) {
            compared++;
            compare(ours, cell, theirs.at(sheet, cell.row(), cell.column()));
          }
        }
      }
    }
  }

  /** What differs, in words. */
  List<String> disagreements() {
    return disagreements;
  }

  /** How many formula cells were compared. */
  int compared() {
    return compared;
  }

  private void compare(Book ours, BookCell cell, BookCell other) {
    if (!cell.isNumber()) {
      // The digits of what is zero but for rounding are those of the program.
      boolean rounding = cell.text().matches(".*E-1\\d.*");
      if (!rounding && !cell.text().equals(other.text())) {
        disagreements.add(cell.words() + ", but recalculated " + other.text());
      }
      return;
    }
    double scale = Math.max(Math.abs(cell.number()), SCALES.getOrDefault(unit(ours, cell), 1.0));
    if (!other.isNumber() || !(Math.abs(cell.number() - other.number()) <= AGREEMENT * scale)) {
      disagreements.add(cell.words() + ", but recalculated " + other.text());
    }
  }

  /** The unit beside a number or over its column. */
  private static String unit(Book book, BookCell cell) {
    String beside = book.at(cell.sheet(), cell.row(), cell.column() + 1).text();
    if (SCALES.containsKey(beside)) {
      return beside;
    }
    for (int row = cell.row() - 1; row >= 0; row--) {
      String above = book.at(cell.sheet(), row, cell.column()).text();
      if (SCALES.containsKey(above)) {
        return above;
      }
    }
    return "";
  }
}
