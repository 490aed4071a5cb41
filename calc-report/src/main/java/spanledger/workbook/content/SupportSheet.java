package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.envelope.ReactionFinding;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;

/** The extreme reactions of every support, handed on to whoever designs anchors and ground. */
final class SupportSheet {

  private SupportSheet() {}

  static void write(
      LedgerWorkbook workbook, List<ReactionFinding> findings, SupportReactions reactions) {
    LedgerSheet sheet = workbook.sheet(SheetNames.SUPPORTS);
    sheet.title(
        "Support reactions",
        "As the support acts on the structure, global axes. A negative reaction along Z means that"
            + " the support must hold the structure down.");
    sheet.note(
        "Demands only: anchors, ground and sliding are NOT CHECKED here. Hand these forces to whoever"
            + " designs them.");
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (ReactionFinding finding : findings) {
      Optional<StateSolved> state = reactions.state(finding.instance());
      Sums sum =
          reactions.of(sheet.name(), finding.instance(), finding.support(), finding.freedom());
      rows.add(
          List.of(
              LedgerCell.text(finding.support().node().name()),
              LedgerCell.text(finding.freedom().words()),
              LedgerCell.text(
                  (finding.greatest() ? "greatest, " : "least, ") + finding.limitState().words()),
              sum.cell(),
              LedgerCell.text(state.map(StateSolved::name).orElse("sum over the cases")),
              LedgerCell.text(finding.instance().words())));
    }
    sheet.add(
        new DataTable(
            "",
            List.of(
                Column.text("support", 18),
                Column.text("direction", 12),
                Column.text("extreme", 24),
                Column.number("reaction", "sum over the cases, or of the state", Dimension.FORCE),
                Column.text("from", 20),
                Column.text("combination", 70)),
            rows));
  }
}
