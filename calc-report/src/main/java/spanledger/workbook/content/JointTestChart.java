package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.jointdesign.JointTests;
import spanledger.jointdesign.JointTests.Specimen;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LineChart;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/** The chart of a series of tests: readings, lines, and the two bounds that come of them. */
final class JointTestChart {

  private static final String ROTATION = JointTestCurves.ROTATION;
  private static final String MOMENT = JointTestCurves.MOMENT;

  /** Corners of each line of the chart. */
  private static final int CORNERS = 4;

  private final LedgerSheet sheet;
  private final JointTests tests;
  private final List<List<LedgerCell>> rows = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private final double farthest;

  /**
   * @param tests the series
   */
  JointTestChart(LedgerSheet sheet, JointTests tests) {
    this.sheet = sheet;
    this.tests = tests;
    this.farthest =
        tests.specimens().stream()
            .flatMap(s -> s.curve().points().stream())
            .mapToDouble(p -> p.rotation())
            .max()
            .orElse(1);
  }

  /** Writes the corners of the lines, and the chart over the rows left for it. */
  void write(
      JointTestCurves curves,
      ProcedureCells lines,
      ProcedureCells held,
      ProcedureCells play,
      ProcedureCells stiffness,
      ProcedureCells moment,
      int chartRow) {
    for (int i = 0; i < tests.specimens().size(); i++) {
      Specimen specimen = tests.specimens().get(i);
      NumberAt last = curves.reading(i, specimen.fit().readings() - 1, ROTATION);
      boolean isHeld = specimen.sums().held() > 0;
      add(
          "lines of specimen " + specimen.fit().specimen(),
          lines.number(i, "φ_0"),
          lines.number(i, "k_φ"),
          isHeld ? held.number(i, "M_h") : held.number(i, "M_max"),
          last);
    }
    NumberAt end = farthest(curves);
    NumberAt resisted = moment.number(0, "X_low");
    add("soft bound", play.number(0, "X_high"), stiffness.number(0, "X_low"), resisted, end);
    add("stiff bound", play.number(0, "X_low"), stiffness.number(0, "X_high"), resisted, end);
    DataCells cells =
        sheet.add(
            new DataTable(
                "Corners of the lines in the chart",
                List.of(
                    Column.text("line", 28),
                    Column.number(ROTATION, "rotation", Dimension.NONE)
                        .withUnit("rad")
                        .withSource(Source.derived("origin of the chart")),
                    Column.number(MOMENT, "moment", Dimension.MOMENT)
                        .withSource(Source.derived("nothing resists in the play"))),
                rows));
    List<LineChart.Line> drawn = new ArrayList<>();
    for (int i = 0; i < tests.specimens().size(); i++) {
      int count = tests.specimens().get(i).curve().points().size();
      drawn.add(
          new LineChart.Line(
              "readings of " + tests.specimens().get(i).fit().specimen(),
              curves.cells(i, 0, count, ROTATION),
              curves.cells(i, 0, count, MOMENT),
              LineChart.Look.CROSSES));
    }
    for (int i = 0; i < names.size(); i++) {
      int first = i * CORNERS;
      int last = first + CORNERS - 1;
      drawn.add(
          new LineChart.Line(
              names.get(i),
              cells.address(first, ROTATION).to(cells.address(last, ROTATION)),
              cells.address(first, MOMENT).to(cells.address(last, MOMENT)),
              look(i)));
    }
    sheet.chart(
        new LineChart(
            tests.joint().name() + ": moments over rotations, with lines and bounds",
            "rotation, rad",
            "moment, N·mm",
            farthest,
            LineChart.GENERAL,
            drawn,
            true),
        chartRow);
  }

  private LineChart.Look look(int line) {
    if (line < tests.specimens().size()) {
      return LineChart.Look.THIN;
    }
    return line == tests.specimens().size() ? LineChart.Look.BROKEN : LineChart.Look.THICK;
  }

  private NumberAt farthest(JointTestCurves curves) {
    for (int i = 0; i < tests.specimens().size(); i++) {
      int last = tests.specimens().get(i).curve().points().size() - 1;
      NumberAt cell = curves.reading(i, last, ROTATION);
      if (cell.value() == farthest) {
        return cell;
      }
    }
    throw new IllegalStateException("No reading is the farthest.");
  }

  /** From the origin along the play, up with the stiffness to the moment, and on to the end. */
  private void add(String name, NumberAt play, NumberAt stiffness, NumberAt most, NumberAt end) {
    String at = sheet.name();
    double meets = play.value() + most.value() / stiffness.value();
    String meeting = play.from(at) + "+" + most.from(at) + "/" + stiffness.from(at);
    double turn = Math.min(meets, end.value());
    double reached = stiffness.value() * (turn - play.value());
    names.add(name);
    corner(name, LedgerCell.given(0), LedgerCell.given(0));
    corner(name, LedgerCell.linked(play), LedgerCell.given(0));
    corner(
        name,
        LedgerCell.live("MIN(" + meeting + "," + end.from(at) + ")", turn),
        LedgerCell.live(
            stiffness.from(at) + "*({" + ROTATION + "}-" + play.from(at) + ")", reached));
    corner(
        name,
        LedgerCell.linked(end),
        LedgerCell.live(
            "MIN("
                + most.from(at)
                + ","
                + stiffness.from(at)
                + "*({"
                + ROTATION
                + "}-"
                + play.from(at)
                + "))",
            Math.min(most.value(), stiffness.value() * (end.value() - play.value()))));
  }

  private void corner(String name, LedgerCell rotation, LedgerCell moment) {
    rows.add(List.of(LedgerCell.text(name), rotation, moment));
  }
}
