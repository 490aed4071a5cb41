package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.jointdesign.JointJudgement;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;

/** Member ends whose stiffness in the analysis stands on the word of the job. */
final class KeptStiffnessTable {

  private KeptStiffnessTable() {}

  /** Writes them; nothing if there are none. */
  static void write(LedgerSheet sheet, List<JointJudgement.Kept> kept) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (JointJudgement.Kept one : kept) {
      rows.add(
          List.of(
              LedgerCell.text(one.end().name()),
              LedgerCell.text(one.what()),
              LedgerCell.text(one.why().reason()),
              LedgerCell.text(one.why().source().citation())));
    }
    if (!rows.isEmpty()) {
      sheet.add(
          new DataTable(
              "Stiffness as analysed, though the parts give another: the word of the job",
              List.of(
                  Column.text("member end", 30),
                  Column.wrapped("what", 60),
                  Column.wrapped("reason", 40),
                  Column.wrapped("source", 30)),
              rows));
    }
  }
}
