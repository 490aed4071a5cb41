package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.verdict.Assessment;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.LineChart;
import spanledger.workbook.layout.Outcome;

/**
 * Influence lines where moving loads walk, drawn, with the worst place of a single force marked.
 */
final class InfluenceSheet {

  static final String NAME = "Influence lines";
  static final String PROOF = "Influence proof";
  static final String MOVEMENTS = "Influence movements";
  static final String BALANCE = "Influence balance";

  /** Each line is proved on the whole frame, so a large frame has room for few of them. */
  private static final int SEGMENTS = 320;

  private static final String PLACE = "s";
  private static final String ORDINATE = "η";

  private InfluenceSheet() {}

  /** Writes the sheets; none if no load moves. */
  static void write(
      LedgerWorkbook workbook, Assessment assessment, SegmentSheets segments, NodeSheet nodes) {
    List<InfluencePick> picks = InfluencePick.of(assessment, SEGMENTS);
    if (picks.isEmpty()) {
      return;
    }
    LedgerSheet sheet = workbook.sheet(NAME);
    sheet.title(
        "Influence lines",
        "What a force of 1 N adds to an effect, wherever it stands along a chain of members; the"
            + " greatest effects where moving loads walk.");
    sheet.note(
        "By the reciprocal theorem (Maxwell, Betti) the frame, moved by a unit of what works on the"
            + " effect, shows the line as its movement along the load: by a kink of 1 at the cut for"
            + " a bending moment, by a force of 1 N for a movement, with the support gone by -1 mm"
            + " for its reaction. The sheet "
            + BALANCE
            + " proves the movements: every node is in balance. Without factors; first order. Each line is proved on the whole"
            + " frame, so large frames show fewer lines.");
    LedgerSheet behind = workbook.sheet(PROOF);
    behind.title(
        "Proof of the influence lines",
        "For each line: what a unit of each movement adds to the effect acts as loads on the ends of"
            + " the cut segment, the frame moved by them is in balance, and points of the path move"
            + " with it.");
    LedgerSheet movements = workbook.sheet(MOVEMENTS);
    movements.title(
        "Movements for the influence lines",
        "Found by the solver. The sheet "
            + BALANCE
            + " proves them: with these movements, and no others, the forces at every node"
            + " balance.");
    LedgerSheet balance = workbook.sheet(BALANCE);
    balance.title(
        "Balance for the influence lines",
        "At every node: what the segments take from it, less the loads on it, less what a support"
            + " gives. Nothing may be left over.");
    InfluenceProof.Sheets sheets = new InfluenceProof.Sheets(behind, movements, balance);
    for (int i = 0; i < picks.size(); i++) {
      InfluencePick pick = picks.get(i);
      InfluenceProof proof = InfluenceProof.write(sheets, pick, i + 1, segments, nodes);
      InfluenceOrdinates ordinates = InfluenceOrdinates.write(behind, pick, proof, segments);
      write(sheet, i + 1, pick, proof, ordinates);
    }
  }

  private static void write(
      LedgerSheet sheet,
      int number,
      InfluencePick pick,
      InfluenceProof proof,
      InfluenceOrdinates ordinates) {
    String title = number + ": " + pick.words();
    sheet.heading(title);
    int chartRow = sheet.nextRow();
    sheet.skip(LineChart.ROWS + 1);
    List<List<LedgerCell>> rows = new ArrayList<>();
    int worst = -1;
    for (int i = 0; i < ordinates.count(); i++) {
      Sums ordinate = new Sums(sheet.name());
      ordinates.parts(i).forEach(ordinate::plus);
      worst = ordinates.isWorst(i) ? i : worst;
      rows.add(
          List.of(
              LedgerCell.text(ordinates.segment(i)),
              LedgerCell.linked(ordinates.place(i)),
              ordinate.cell(),
              LedgerCell.text(ordinates.isWorst(i) ? "a force is worst here" : "")));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Ordinates along " + pick.path().name(),
                List.of(
                    Column.text("segment", 34),
                    Column.number(PLACE, "along the path", Dimension.LENGTH),
                    Column.number(ORDINATE, "", Dimension.NONE).withUnit(pick.unit()),
                    Column.text("worst place", 24)),
                rows));
    List<LineChart.Line> lines = new ArrayList<>();
    lines.add(
        new LineChart.Line(
            "influence line", cells.column(PLACE), cells.column(ORDINATE), LineChart.Look.THICK));
    mark(sheet, pick, cells, worst).ifPresent(lines::add);
    sheet.add(proofTable(sheet, proof));
    sheet.chart(
        new LineChart(
            title,
            "place along the path, mm",
            ORDINATE + ", " + pick.unit(),
            pick.path().length(),
            LineChart.WHOLE,
            lines,
            false),
        chartRow);
  }

  /** From the axis to the line where a force is worst. */
  private static Optional<LineChart.Line> mark(
      LedgerSheet sheet, InfluencePick pick, DataCells cells, int worst) {
    if (worst < 0) {
      return Optional.empty();
    }
    DataCells mark =
        sheet.add(
            new DataTable(
                "Mark of the worst place",
                List.of(
                    Column.text("point", 34),
                    Column.number(PLACE, "along the path", Dimension.LENGTH),
                    Column.number(ORDINATE, "", Dimension.NONE)
                        .withUnit(pick.unit())
                        .withSource(Source.derived("Height of the axis"))),
                List.of(
                    List.of(
                        LedgerCell.text("on the axis"),
                        LedgerCell.linked(cells.number(worst, PLACE)),
                        LedgerCell.given(0)),
                    List.of(
                        LedgerCell.text("on the line"),
                        LedgerCell.linked(cells.number(worst, PLACE)),
                        LedgerCell.linked(cells.number(worst, ORDINATE))))));
    return Optional.of(
        new LineChart.Line(
            "worst place", mark.column(PLACE), mark.column(ORDINATE), LineChart.Look.MARKED));
  }

  private static DataTable proofTable(LedgerSheet sheet, InfluenceProof proof) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<String> words = List.of("forces at the nodes", "moments at the nodes", "held movements");
    for (int row = 0; row < words.size(); row++) {
      rows.add(
          List.of(
              LedgerCell.text(words.get(row)),
              new LedgerCell.LiveText(
                  proof.verdict(row).from(sheet.name()), Outcome.BALANCED.words())));
    }
    return new DataTable(
        "Proof of the movements", List.of(Column.text("of", 34), Column.text("verdict", 16)), rows);
  }
}
