package spanledger.verification.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;

/**
 * A workbook against its recalculation by another program, formula cell by formula cell.
 *
 * <p>Numbers must agree to 1e-9 of their size or, near zero, to 1e-9 of the greatest number in
 * their column of the table. What is left over at nodes is nothing but rounding, so neither measure
 * means anything there: the last digits are all there is. It must agree to 1e-9 of the greatest
 * force (or moment) that the sheet Balance adds up at any node, since that is what rounding is in
 * proportion to. On the sheet Vibration what is left over is a ratio less 1, and modes are scaled
 * to 1: there 1 is the measure.
 */
final class Recalculation {

  private static final double AGREEMENT = 1e-9;
  private static final Pattern OTHER_CELL =
      Pattern.compile("(?:'([^']+)'|([A-Za-z]+))!\\$?([A-Z]+)\\$?([0-9]+)");
  private static final String BALANCE = "Balance";
  private static final String VIBRATION = "Vibration";
  private static final String SUMMARY = "Summary";
  private static final String INFLUENCE = "Influence proof";
  private static final Set<String> UNITS = Set.of("mm", "N", "N·mm");

  private final Book ours;
  private final Book theirs;
  private final Map<String, Map<String, Double>> leftOverScale = new HashMap<>();
  private final List<String> disagreements = new ArrayList<>();
  private int compared;
  private int nearZero;

  Recalculation(Book ours, Book theirs) {
    this.ours = ours;
    this.theirs = theirs;
    for (String sheet : ours.names()) {
      if (isBalance(sheet)) {
        leftOverScale.put(
            sheet,
            Map.of(
                "force", greatestAdded(sheet, Set.of(2, 3, 4)),
                "moment", greatestAdded(sheet, Set.of(5, 6, 7))));
      }
    }
    for (String sheet : ours.names()) {
      ours.tables(sheet).forEach(this::compareTable);
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

  /** How many agree only by the scale of their column. */
  int nearZero() {
    return nearZero;
  }

  /** Load cases, states and the critical mode have a balance each. */
  private static boolean isBalance(String sheet) {
    return sheet.endsWith(BALANCE) || sheet.endsWith(BALANCE.toLowerCase(Locale.ROOT));
  }

  private double leftOver(String sheet, String kind) {
    return leftOverScale.getOrDefault(sheet, Map.of()).getOrDefault(kind, 0.0);
  }

  private double greatestAdded(String balance, Set<Integer> columns) {
    double greatest = 0;
    for (BookCell cell : ours.sheet(balance)) {
      if (cell.isFormula() && columns.contains(cell.column())) {
        Matcher reference = OTHER_CELL.matcher(cell.formula());
        while (reference.find()) {
          String sheet = reference.group(1) == null ? reference.group(2) : reference.group(1);
          String at = reference.group(3) + reference.group(4);
          greatest = Math.max(greatest, Math.abs(ours.cell(sheet, at).orElseThrow().number()));
        }
      }
    }
    return greatest;
  }

  private void compareTable(List<BookCell> table) {
    Map<Integer, Double> scales = new HashMap<>();
    for (BookCell cell : table) {
      if (cell.isFormula() && cell.isNumber()) {
        scales.merge(cell.column(), Math.abs(cell.number()), Math::max);
      }
    }
    if (table.get(0).sheet().equals(INFLUENCE)) {
      shareScales(table, scales);
    }
    for (BookCell cell : table) {
      if (cell.isFormula()) {
        compare(cell, scale(cell, scales.getOrDefault(cell.column(), 0.0)));
      }
    }
  }

  /**
   * A frame that is moved for an influence line moves in one plane for the most part. Across it
   * deflections are differences of movements that cancel, so they are measured by the deflections
   * in the plane: by the greatest number of the table in the same unit.
   */
  private static void shareScales(List<BookCell> table, Map<Integer, Double> scales) {
    Map<Integer, String> units = new HashMap<>();
    for (BookCell cell : table) {
      if (UNITS.contains(cell.text())) {
        units.putIfAbsent(cell.column(), cell.text());
      }
    }
    Map<String, Double> byUnit = new HashMap<>();
    units.forEach(
        (column, unit) -> byUnit.merge(unit, scales.getOrDefault(column, 0.0), Math::max));
    units.forEach((column, unit) -> scales.put(column, byUnit.getOrDefault(unit, 0.0)));
  }

  /** The size that differences of a number near zero are measured by. */
  private double scale(BookCell cell, double ofColumn) {
    boolean leftOverAtNode = isBalance(cell.sheet()) && cell.column() >= 2 && cell.column() <= 7;
    if (leftOverAtNode) {
      return leftOver(cell.sheet(), cell.column() < 5 ? "force" : "moment");
    }
    if (cell.sheet().equals(VIBRATION)) {
      return Math.max(ofColumn, 1);
    }
    String label = ours.at(cell.sheet(), cell.row(), 0).text();
    boolean greatest =
        (isBalance(cell.sheet()) && cell.column() == 1)
            || (cell.sheet().equals(SUMMARY) && label.contains("left over"));
    if (greatest) {
      String sheet = isBalance(cell.sheet()) ? cell.sheet() : BALANCE;
      return leftOver(sheet, label.contains("force") ? "force" : "moment");
    }
    return ofColumn;
  }

  private void compare(BookCell cell, double scale) {
    compared++;
    BookCell other =
        theirs
            .cell(
                cell.sheet(), CellReference.convertNumToColString(cell.column()) + (cell.row() + 1))
            .orElse(new BookCell(cell.sheet(), 0, 0, "", BookCell.Kind.NOTHING, "nothing", 0));
    if (!cell.isNumber()) {
      if (!cell.text().equals(other.text())) {
        disagree(cell, other);
      }
      return;
    }
    if (!other.isNumber()) {
      disagree(cell, other);
      return;
    }
    double difference = Math.abs(cell.number() - other.number());
    if (difference > AGREEMENT * Math.abs(cell.number())) {
      nearZero++;
      if (!(difference <= AGREEMENT * scale)) {
        disagree(cell, other);
      }
    }
  }

  private void disagree(BookCell cell, BookCell other) {
    disagreements.add(cell.words() + ", but recalculated " + other.text());
  }
}
