package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.jointdesign.AnchorDemand;
import spanledger.jointdesign.JointJudgement;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;

/** What every anchor of every foot must carry, handed on to whoever designs them. */
final class AnchorSheet {

  private static final Source GIVEN = Source.declared("description of the foot: jointDetails");

  private AnchorSheet() {}

  /** Writes the sheet; nothing if no described foot has anchors. */
  static void write(LedgerWorkbook workbook, JointJudgement judgement) {
    if (judgement.anchors().isEmpty()) {
      return;
    }
    LedgerSheet sheet = workbook.sheet(SheetNames.ANCHORS);
    sheet.title(
        "Anchors: for their designer",
        "Design forces of single anchors under factored loads for strength and for stability, each"
            + " extreme with what acts at the same time. Places and shears are along the sides of the"
            + " plate, from its middle.");
    sheet.note(
        "Demands only: anchors and ground are NOT CHECKED here, their approval governs. Tension is"
            + " that of a stiff plate, without prying: see whether the plate stays elastic in Joint"
            + " checks. The way of the forces of the governing cases is live in Joint forces; forces"
            + " of single load cases, for combinations of your own, stand in Balance.");
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (AnchorDemand demand : judgement.anchors()) {
      rows.add(
          List.of(
              LedgerCell.text(demand.foot()),
              LedgerCell.text(demand.anchor()),
              LedgerCell.given(demand.first()),
              LedgerCell.given(demand.second()),
              LedgerCell.text(demand.ofTension() ? "greatest tension" : "greatest shear"),
              LedgerCell.solved(demand.tension()),
              LedgerCell.solved(demand.shear()),
              LedgerCell.solved(demand.shearFirst()),
              LedgerCell.solved(demand.shearSecond()),
              LedgerCell.text(demand.instance().combination().template().limitState().words()),
              LedgerCell.text(demand.instance().words())));
    }
    sheet.add(
        new DataTable(
            "",
            List.of(
                Column.text("foot", 26),
                Column.text("anchor", 14),
                Column.number("y", "along the first side", Dimension.LENGTH).withSource(GIVEN),
                Column.number("z", "along the second side", Dimension.LENGTH).withSource(GIVEN),
                Column.text("extreme", 18),
                Column.number("tension", "found by search", Dimension.FORCE),
                Column.number("shear", "found by search", Dimension.FORCE),
                Column.number("shear y", "first side, found by search", Dimension.FORCE),
                Column.number("shear z", "second side, found by search", Dimension.FORCE),
                Column.text("limit state", 14),
                Column.text("combination", 70)),
            rows));
  }
}
