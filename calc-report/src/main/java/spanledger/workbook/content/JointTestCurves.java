package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.joint.stiffness.FittedCurve;
import spanledger.joint.stiffness.MomentRotationCurve.Point;
import spanledger.joint.stiffness.TestFit;
import spanledger.joint.stiffness.TestHeld;
import spanledger.joint.stiffness.TestLine;
import spanledger.jointdesign.JointTests;
import spanledger.jointdesign.JointTests.Specimen;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** The readings of one series of tests, the sums over them, and what the lines miss of them. */
final class JointTestCurves {

  static final String ROTATION = "φ";
  static final String MOMENT = "M";
  private static final CompiledProcedure LINE = TestLine.PROCEDURE.compile();
  private static final CompiledProcedure HELD = TestHeld.PROCEDURE.compile();
  private static final CompiledProcedure FIT = TestFit.PROCEDURE.compile();
  private static final Source RISES = Source.derived("the readings go on rising");

  private final LedgerSheet sheet;
  private final JointTests tests;
  private final DataCells readings;

  private JointTestCurves(LedgerSheet sheet, JointTests tests, DataCells readings) {
    this.sheet = sheet;
    this.tests = tests;
    this.readings = readings;
  }

  /** Writes the readings. */
  static JointTestCurves write(LedgerSheet sheet, JointTests tests) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Specimen specimen : tests.specimens()) {
      for (int i = 0; i < specimen.curve().points().size(); i++) {
        Point point = specimen.curve().points().get(i);
        rows.add(
            List.of(
                LedgerCell.text("specimen " + specimen.fit().specimen()),
                LedgerCell.given(point.rotation()),
                LedgerCell.given(point.moment()),
                LedgerCell.text(line(specimen.fit(), i)),
                LedgerCell.text(specimen.file())));
      }
    }
    return new JointTestCurves(
        sheet,
        tests,
        sheet.add(
            new DataTable(
                "Readings",
                List.of(
                    Column.text("specimen", 28),
                    Column.number(ROTATION, "rotation", Dimension.NONE).withUnit("rad"),
                    Column.number(MOMENT, "moment", Dimension.MOMENT),
                    Column.text("line", 20),
                    Column.text(DataTable.SOURCE_HEADING, 40)),
                rows)));
  }

  private static String line(FittedCurve fit, int reading) {
    if (reading >= fit.readings()) {
      return "left out: it falls";
    }
    if (reading < fit.division().from()) {
      return "play";
    }
    return reading < fit.division().to() ? "rises" : "held";
  }

  /** The lines through the rising readings: a row for each specimen. */
  ProcedureTable lines() {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < tests.specimens().size(); i++) {
      Specimen specimen = tests.specimens().get(i);
      FittedCurve.Division division = specimen.fit().division();
      String rotations = cells(i, division.from(), division.to(), ROTATION).from(sheet.name());
      String moments = cells(i, division.from(), division.to(), MOMENT).from(sheet.name());
      rows.add(
          row(
              specimen.line().label(),
              InputCell.live("COUNT(" + rotations + ")", specimen.sums().rising(), "readings"),
              InputCell.live("SUM(" + rotations + ")", specimen.sums().rotations(), "readings"),
              InputCell.live("SUM(" + moments + ")", specimen.sums().moments(), "readings"),
              InputCell.live("SUMSQ(" + rotations + ")", specimen.sums().squares(), "readings"),
              InputCell.live(
                  "SUMPRODUCT(" + rotations + "," + moments + ")",
                  specimen.sums().products(),
                  "readings")));
    }
    return new ProcedureTable("Lines through the rising readings", LINE, labels(), rows);
  }

  /** The moments that the specimens resist: a row for each. */
  ProcedureTable held() {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < tests.specimens().size(); i++) {
      Specimen specimen = tests.specimens().get(i);
      int count = specimen.curve().points().size();
      InputCell greatest =
          InputCell.live(
              "MAX(" + cells(i, 0, count, MOMENT).from(sheet.name()) + ")",
              specimen.curve().greatestMoment(),
              "readings");
      InputCell held = InputCell.literal(0, RISES);
      InputCell sum = InputCell.literal(0, RISES);
      if (specimen.sums().held() > 0) {
        String range =
            cells(i, specimen.fit().division().to(), specimen.fit().readings(), MOMENT)
                .from(sheet.name());
        held = InputCell.live("COUNT(" + range + ")", specimen.sums().held(), "readings");
        sum = InputCell.live("SUM(" + range + ")", specimen.sums().heldMoments(), "readings");
      }
      rows.add(row(specimen.held().label(), greatest, held, sum));
    }
    return new ProcedureTable("Moments that the specimens resist", HELD, labels(), rows);
  }

  /** Writes the lines beside the readings, and by how much they miss. */
  void writeMissed(ProcedureCells lines, ProcedureCells held) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    List<Integer> firsts = new ArrayList<>();
    for (int i = 0; i < tests.specimens().size(); i++) {
      firsts.add(rows.size());
      for (int j = 0; j < tests.specimens().get(i).fit().readings(); j++) {
        rows.add(
            row(
                tests.specimens().get(i).line().label(),
                InputCell.shown(reading(i, j, ROTATION)),
                InputCell.shown(reading(i, j, MOMENT)),
                InputCell.shown(lines.number(i, "φ_0")),
                InputCell.shown(lines.number(i, "k_φ")),
                InputCell.shown(held.number(i, "n_h")),
                InputCell.shown(held.number(i, "M_h"))));
      }
    }
    ProcedureCells fit =
        sheet.add(new ProcedureTable("Lines beside the readings", FIT, labels(), rows));
    List<List<LedgerCell>> missed = new ArrayList<>();
    for (int i = 0; i < tests.specimens().size(); i++) {
      Specimen specimen = tests.specimens().get(i);
      int last = firsts.get(i) + specimen.fit().readings() - 1;
      String range =
          fit.number(firsts.get(i), "e").at().to(fit.number(last, "e").at()).from(sheet.name());
      NumberAt greatest = held.number(i, "M_max");
      missed.add(
          List.of(
              LedgerCell.text(specimen.line().label()),
              LedgerCell.live(
                  "SQRT(SUMSQ(" + range + ")/COUNT(" + range + "))", specimen.fit().scatter()),
              LedgerCell.live(
                  "{missed}/" + greatest.from(sheet.name()),
                  specimen.fit().scatter() / greatest.value())));
    }
    sheet.add(
        new DataTable(
            "By how much the lines miss the readings",
            List.of(
                Column.text("specimen", 28),
                Column.number("missed", "root of the mean square", Dimension.MOMENT),
                Column.number("share", "of the greatest moment", Dimension.NONE)),
            missed));
  }

  /** The cells of readings of a specimen, from one to before another. */
  CellRange cells(int specimen, int from, int to, String heading) {
    int first = first(specimen);
    return readings.address(first + from, heading).to(readings.address(first + to - 1, heading));
  }

  /** A number of a reading. */
  NumberAt reading(int specimen, int reading, String heading) {
    return readings.number(first(specimen) + reading, heading);
  }

  private int first(int specimen) {
    int first = 0;
    for (int i = 0; i < specimen; i++) {
      first += tests.specimens().get(i).curve().points().size();
    }
    return first;
  }

  private static List<ProcedureTable.Label> labels() {
    return List.of(new ProcedureTable.Label("specimen", 30));
  }

  private static ProcedureTable.Row row(String label, InputCell... inputs) {
    return new ProcedureTable.Row(List.of(label), List.of(inputs));
  }
}
