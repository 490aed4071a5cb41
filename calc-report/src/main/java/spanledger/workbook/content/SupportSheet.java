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
      LedgerWorkbook workbook,
      List<ReactionFinding> findings,
      CombinationSheet combinations,
      BalanceSheet balance,
      Optional<StateSheets> states) {
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
      Optional<StateSolved> state = states.flatMap(all -> all.of(finding.instance()));
      Sums sum =
          state.isPresent()
              ? ofState(sheet, finding, state.get(), states.orElseThrow().balance())
              : summed(sheet, finding, combinations, balance);
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

  private static Sums summed(
      LedgerSheet sheet,
      ReactionFinding finding,
      CombinationSheet combinations,
      BalanceSheet balance) {
    Sums sum = new Sums(sheet.name());
    for (CombinationSheet.Weighted part : combinations.parts(finding.instance())) {
      sum.plusProduct(
          part.factor(),
          balance.reaction(part.kept(), finding.support().node(), finding.freedom()));
    }
    return sum;
  }

  /** The reaction of a state; nothing is summed up where the support has let go. */
  private static Sums ofState(
      LedgerSheet sheet, ReactionFinding finding, StateSolved state, BalanceSheet balance) {
    Sums sum = new Sums(sheet.name());
    if (balance.gives(state, finding.support(), finding.freedom())) {
      sum.plus(balance.reaction(state, finding.support().node(), finding.freedom()));
    }
    return sum;
  }
}
