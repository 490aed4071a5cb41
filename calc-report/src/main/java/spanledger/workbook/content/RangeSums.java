package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/** A live sum over rows of tables, with its value. */
final class RangeSums {

  private final String sheet;
  private final List<String> ranges = new ArrayList<>();
  private double value;

  /**
   * @param sheet the sheet on which the formula stands
   */
  RangeSums(String sheet) {
    this.sheet = sheet;
  }

  /** Adds some rows of a column that follow each other. */
  RangeSums plus(ProcedureCells cells, int first, int count, String symbol) {
    return plus(row -> cells.number(row, symbol), first, count);
  }

  /** Adds some rows of a column that follow each other. */
  RangeSums plus(DataCells cells, int first, int count, String heading) {
    return plus(row -> cells.number(row, heading), first, count);
  }

  private RangeSums plus(IntFunction<NumberAt> cells, int first, int count) {
    if (count > 0) {
      ranges.add(cells.apply(first).at().to(cells.apply(first + count - 1).at()).from(sheet));
      for (int row = first; row < first + count; row++) {
        value += cells.apply(row).value();
      }
    }
    return this;
  }

  /** The sum; 0 over no rows. */
  LedgerCell cell() {
    return LedgerCell.live(formula(), value);
  }

  /** The formula without the equals sign. */
  String formula() {
    return ranges.isEmpty() ? "0" : "SUM(" + String.join(",", ranges) + ")";
  }

  double value() {
    return value;
  }
}
