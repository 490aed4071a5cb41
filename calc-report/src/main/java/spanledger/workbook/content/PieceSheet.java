package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.job.Job;
import spanledger.parts.PieceList;
import spanledger.parts.PieceMass;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** What has to be cut and carried. */
final class PieceSheet {

  private static final Source NODES = Source.declared("between the nodes of the job");

  private PieceSheet() {}

  static ProcedureCells write(LedgerWorkbook workbook, Job job, SectionSheet sections) {
    LedgerSheet sheet = workbook.sheet(SheetNames.PIECES);
    sheet.title("Pieces and masses", "Members that are cut alike, their number, length and mass.");
    sheet.note(
        "Lengths are between centre lines; joints take off or add to them. Decking, brackets, bolts"
            + " and feet are not in the masses.");
    CompiledProcedure procedure = PieceMass.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (PieceList.Piece piece : PieceList.of(job.frame()).pieces()) {
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  piece.section().name(),
                  piece.alloy().designation(),
                  piece.role().words(),
                  String.join(", ", piece.members())),
              List.of(
                  InputCell.shown(sections.property(piece.section(), "A")),
                  InputCell.shown(sections.alloy(piece.alloy(), "ρ")),
                  InputCell.literal(piece.length(), NODES),
                  InputCell.literal(piece.count(), NODES))));
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                "Pieces",
                procedure,
                List.of(
                    new ProcedureTable.Label("section", 20),
                    new ProcedureTable.Label("alloy", 12),
                    new ProcedureTable.Label("for", 14),
                    new ProcedureTable.Label("members", 60)),
                rows));
    double total = 0;
    double heaviest = 0;
    for (int row = 0; row < cells.rows(); row++) {
      total += cells.value(row, "m_all");
      heaviest = Math.max(heaviest, cells.value(row, "m"));
    }
    sheet.add(
        new DataTable(
            "Sums",
            List.of(Column.wrapped("what", 14), Column.number("mass", "", Dimension.MASS)),
            List.of(
                List.of(
                    LedgerCell.text("all members"),
                    LedgerCell.live(
                        "SUM(" + cells.column("m_all").from(sheet.name()) + ")", total)),
                List.of(
                    LedgerCell.text("heaviest single piece"),
                    LedgerCell.live(
                        "MAX(" + cells.column("m").from(sheet.name()) + ")", heaviest)))));
    return cells;
  }
}
