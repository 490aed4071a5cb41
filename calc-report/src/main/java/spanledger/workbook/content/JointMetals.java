package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;

/**
 * Advice on bolts and aluminium that touch; in every surroundings if the job does not say which.
 */
final class JointMetals {

  private JointMetals() {}

  /** Writes the advice; nothing if there is none. */
  static void write(LedgerSheet sheet, List<ContactAdvice> contacts) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (ContactAdvice advice : contacts) {
      rows.add(
          List.of(
              LedgerCell.text(advice.words() + ", " + advice.surroundings().words()),
              LedgerCell.text(advice.advice()),
              LedgerCell.blank(),
              LedgerCell.blank(),
              LedgerCell.text(advice.source().citation()),
              LedgerCell.text(advice.source().confidence().words())));
    }
    if (!rows.isEmpty()) {
      sheet.add(
          new DataTable(
              "Metals that touch: advice, not a verdict",
              List.of(
                  Column.wrapped("metals, surroundings", 26),
                  Column.wrapped("advice", 60),
                  Column.text(" ", 12),
                  Column.text("  ", 10),
                  Column.wrapped("from", 50),
                  Column.text("confidence", 36)),
              rows));
    }
  }
}
