package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds.Bound;
import spanledger.job.Job;
import spanledger.job.SpringOrigins;
import spanledger.jointdesign.JointTests;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.LineChart;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * Tests of joints: readings, the lines through them, characteristic values, and the springs that
 * the analysis takes of them.
 */
final class JointTestSheet {

  static final String NAME = "Joint tests";

  private static final String STIFFNESS = "stiffness";
  private static final String PLAY = "play";

  private final LedgerSheet sheet;
  private final SpringCells springs;
  private final List<ProcedureCells> tables;

  private JointTestSheet(LedgerSheet sheet, SpringCells springs, List<ProcedureCells> tables) {
    this.sheet = sheet;
    this.springs = springs;
    this.tables = tables;
  }

  /**
   * Writes the sheet; none if the job names no tests.
   *
   * @param springs takes the cells of the springs
   * @param tables takes the tables of procedures
   */
  static void write(
      LedgerWorkbook workbook, Job job, SpringCells springs, List<ProcedureCells> tables) {
    Map<JointTests, List<SpringUse>> uses = new LinkedHashMap<>();
    for (SpringUse use : SpringUse.of(job)) {
      if (use.origin() instanceof SpringOrigins.OfTests of) {
        uses.computeIfAbsent(of.tests(), k -> new ArrayList<>()).add(use);
      }
    }
    if (uses.isEmpty()) {
      return;
    }
    LedgerSheet sheet = workbook.sheet(NAME);
    sheet.title(
        NAME,
        "What tests of joints say: readings, the lines through them, their characteristic values, and"
            + " the springs of this workbook.");
    sheet.note(
        "Three straight lines stand for each specimen: play, in which nothing resists; a stiffness;"
            + " and a moment that is held, if the readings show one. Which readings belong to which"
            + " line is found by search: of all divisions the one whose lines miss the readings"
            + " least. All else follows by formula. The joint is taken to act alike in both senses.");
    JointTestSheet all = new JointTestSheet(sheet, springs, tables);
    uses.forEach(all::write);
  }

  private void write(JointTests tests, List<SpringUse> uses) {
    sheet.heading(tests.joint().name() + ": " + tests.joint().source().citation());
    int chartRow = sheet.nextRow();
    sheet.skip(LineChart.ROWS + 1);
    JointTestCurves curves = JointTestCurves.write(sheet, tests);
    ProcedureCells lines = add(curves.lines());
    ProcedureCells held = add(curves.held());
    ProcedureCells play = characteristic("Play", tests.play(), lines, "φ_0");
    ProcedureCells stiffness = characteristic("Stiffness", tests.stiffness(), lines, "k_φ");
    ProcedureCells moment = characteristic("Moment resisted", tests.moment(), held, "M_R");
    springs.addTested(tests.moment().label(), moment.number(0, "X_low"));
    writeSprings(uses, play, stiffness);
    curves.writeMissed(lines, held);
    new JointTestChart(sheet, tests).write(curves, lines, held, play, stiffness, moment, chartRow);
  }

  /**
   * @param specimens has a row for each specimen, in order
   * @param symbol of the property there
   */
  private ProcedureCells characteristic(
      String title, Working run, ProcedureCells specimens, String symbol) {
    List<InputCell> inputs = new ArrayList<>();
    for (Feed feed : run.feeds()) {
      inputs.add(
          feed instanceof Feed.Given given
              ? InputCell.literal(given.value(), given.source())
              : InputCell.shown(specimens.number(inputs.size(), symbol)));
    }
    return add(
        new ProcedureTable(
            title,
            run.procedure(),
            List.of(new ProcedureTable.Label("of", 30)),
            List.of(new ProcedureTable.Row(List.of(run.label()), inputs))));
  }

  private ProcedureCells add(ProcedureTable table) {
    ProcedureCells cells = sheet.add(table);
    tables.add(cells);
    return cells;
  }

  private void writeSprings(
      List<SpringUse> uses, ProcedureCells ofPlay, ProcedureCells ofStiffness) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (SpringUse use : uses) {
      NumberAt stiffness = ofStiffness.number(0, JointTests.bound(use.bound(), false));
      NumberAt play = ofPlay.number(0, JointTests.bound(use.bound(), true));
      rows.add(
          List.of(
              LedgerCell.text(use.words()),
              LedgerCell.text(use.bound() == Bound.LOWER ? "soft, wide play" : "stiff, least play"),
              LedgerCell.linked(play),
              LedgerCell.linked(stiffness)));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Springs that the analysis of this workbook takes",
                List.of(
                    Column.text("member end", 28),
                    Column.text("bound", 20),
                    Column.number(PLAY, "", Dimension.NONE).withUnit("rad"),
                    Column.number(STIFFNESS, "", Dimension.MOMENT).withUnit("N·mm/rad")),
                rows));
    for (int i = 0; i < uses.size(); i++) {
      Optional<NumberAt> play =
          uses.get(i).spring() instanceof Restraint.Play
              ? Optional.of(cells.number(i, PLAY))
              : Optional.empty();
      springs.add(uses.get(i).spring(), cells.number(i, STIFFNESS), play);
    }
  }
}
