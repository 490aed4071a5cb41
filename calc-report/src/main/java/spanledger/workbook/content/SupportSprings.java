package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/** Stiffness of the springs at supports times the squared movement of modes of vibration. */
final class SupportSprings {

  private SupportSprings() {}

  /**
   * Writes the table.
   *
   * @param on the sheet that takes the sums
   * @return the sum of each mode, N·mm
   */
  static List<Sums> work(
      LedgerSheet sheet,
      String on,
      SolvedGroup group,
      Frame frame,
      MovementSheet movements,
      NodeSheet nodes) {
    List<Support> supports = frame.supports();
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Solved mode : group.solved()) {
      for (int i = 0; i < supports.size(); i++) {
        Sums sum = new Sums(sheet.name());
        for (Freedom freedom : Freedom.values()) {
          if (SupportRule.LINEAR.inEffect(mode, supports.get(i), freedom)
              instanceof Restraint.Spring) {
            NumberAt movement = movements.number(mode, supports.get(i).node(), freedom);
            sum.plusProduct(nodes.spring(i, freedom), movement, movement);
          }
        }
        rows.add(
            List.of(
                LedgerCell.text(mode.name()),
                LedgerCell.text(supports.get(i).node().name()),
                sum.cell()));
      }
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Work of springs at supports",
                List.of(
                    Column.text(group.what(), group.width()),
                    Column.text("node", 34),
                    Column.number("U", "stiffness times squared movement", Dimension.MOMENT)),
                rows));
    List<Sums> sums = new ArrayList<>();
    for (Solved mode : group.solved()) {
      int first = mode.index() * supports.size();
      int last = first + supports.size() - 1;
      double total = 0;
      for (int row = first; row <= last; row++) {
        total += cells.number(row, "U").value();
      }
      sums.add(new Sums(on).plusSum(cells.address(first, "U").to(cells.address(last, "U")), total));
    }
    return sums;
  }
}
