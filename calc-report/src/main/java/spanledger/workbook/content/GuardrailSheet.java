package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.JointDemand;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.ProcedureTable;

/** What guardrail posts hand to the connections at their bases. */
final class GuardrailSheet {

  private GuardrailSheet() {}

  static void write(LedgerWorkbook workbook, List<StrengthFinding> findings, CutSheets cuts) {
    CompiledProcedure procedure = JointDemand.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (StrengthFinding finding : findings) {
      if (finding.scope() == StrengthFinding.Scope.POST_BASE
          && finding.measure() == StrengthMeasure.BENDING) {
        Cut cut = DeflectionSheet.cut(finding.governing());
        rows.add(
            new ProcedureTable.Row(
                List.of(finding.member().name(), finding.governing().instance().words()),
                Inputs.of(procedure, symbol -> InputCell.shown(cuts.force(cut, symbol)))));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    LedgerSheet sheet = workbook.sheet(SheetNames.GUARDRAIL);
    sheet.title(
        "Guardrail posts",
        "What each post hands to the connection at its base under guardrail loads, the worst of posts"
            + " made alike.");
    sheet.note(
        "Demands only: the connections themselves are NOT CHECKED here. Rails and posts are checked on"
            + " Member strength and Deflection; Summary lists them under Guardrail.");
    sheet.add(
        new ProcedureTable(
            "",
            procedure,
            List.of(
                new ProcedureTable.Label("post", 18), new ProcedureTable.Label("combination", 60)),
            rows));
  }
}
