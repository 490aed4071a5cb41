package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.NumberAt;

/** A live sum of products of cells, with its value. */
final class Sums {

  private final String sheet;
  private final List<String> terms = new ArrayList<>();
  private double value;

  /**
   * @param sheet the sheet on which the formula stands
   */
  Sums(String sheet) {
    this.sheet = sheet;
  }

  /** Adds a cell. */
  Sums plus(NumberAt cell) {
    terms.add((terms.isEmpty() ? "" : "+") + cell.from(sheet));
    value += cell.value();
    return this;
  }

  /** Adds another sum on the same sheet. */
  Sums plusAll(Sums other) {
    if (!other.isEmpty()) {
      terms.add((terms.isEmpty() ? "" : "+") + other.formula());
      value += other.value;
    }
    return this;
  }

  /**
   * Adds all cells of a range.
   *
   * @param total what they come to
   */
  Sums plusSum(CellRange cells, double total) {
    terms.add((terms.isEmpty() ? "" : "+") + "SUM(" + cells.from(sheet) + ")");
    value += total;
    return this;
  }

  /**
   * Adds the products of the cells of two ranges, side by side.
   *
   * @param total what they come to
   */
  Sums plusProducts(CellRange first, CellRange second, double total) {
    terms.add(
        (terms.isEmpty() ? "" : "+")
            + "SUMPRODUCT("
            + first.from(sheet)
            + ","
            + second.from(sheet)
            + ")");
    value += total;
    return this;
  }

  /** Takes a cell away. */
  Sums minus(NumberAt cell) {
    terms.add("-" + cell.from(sheet));
    value -= cell.value();
    return this;
  }

  /** Adds a product of cells. */
  Sums plusProduct(NumberAt... factors) {
    List<String> addresses = new ArrayList<>();
    double product = 1;
    for (NumberAt factor : factors) {
      addresses.add(factor.from(sheet));
      product *= factor.value();
    }
    terms.add((terms.isEmpty() ? "" : "+") + String.join("*", addresses));
    value += product;
    return this;
  }

  /** Takes a product of two cells away. */
  Sums minusProduct(NumberAt first, NumberAt second) {
    terms.add("-" + first.from(sheet) + "*" + second.from(sheet));
    value -= first.value() * second.value();
    return this;
  }

  boolean isEmpty() {
    return terms.isEmpty();
  }

  /** The formula without the equals sign; 0 for an empty sum. */
  String formula() {
    return terms.isEmpty() ? "0" : String.join("", terms);
  }

  double value() {
    return value;
  }

  LedgerCell cell() {
    return LedgerCell.live(formula(), value);
  }

  LedgerCell residual() {
    return LedgerCell.residual(formula(), value);
  }

  InputCell input(String note) {
    return InputCell.live(formula(), value, note);
  }
}
