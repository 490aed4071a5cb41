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
              LedgerCell.text(advice.words()),
              LedgerCell.text(advice.surroundings().words()),
              LedgerCell.text(advice.advice()),
              LedgerCell.text(advice.source().citation()),
              LedgerCell.text(advice.source().confidence().words())));
    }
    if (!rows.isEmpty()) {
      sheet.add(
          new DataTable(
              "Metals that touch: advice, not a verdict",
              List.of(
                  Column.text("metals", 44),
                  Column.text("surroundings", 44),
                  Column.wrapped("advice", 60),
                  Column.wrapped("from", 40),
                  Column.text("confidence", 36)),
              rows));
    }
  }
}
