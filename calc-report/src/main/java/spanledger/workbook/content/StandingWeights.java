package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.job.Job;
import spanledger.overturning.Acting;
import spanledger.overturning.FloorWeight;
import spanledger.overturning.LineWeight;
import spanledger.overturning.MemberWeight;
import spanledger.overturning.PermanentLoads;
import spanledger.overturning.PlacedForce;
import spanledger.overturning.Standing;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** The permanent loads beside every line about which the structure may tip. */
final class StandingWeights {

  private static final Source JOB = Source.declared("job file");
  private static final Source NO_SWAY =
      Source.derived("0: level forces of permanent load are counted through M_z");
  private static final Source MOVED =
      Source.declared("node of the job, moved by the offset of the joint");
  private static final List<String> SUMS = List.of("M_in", "M_out", "M_z");
  private static final List<String> ENDS = List.of("X_1", "Y_1", "Z_1", "X_2", "Y_2", "Z_2");

  private final LedgerSheet sheet;
  private final StandingLines lines;
  private final FigureSheet figures;
  private final RangeSums weight;
  private final List<RangeSums[]> byLine = new ArrayList<>();
  private final ProcedureCells memberWeights;
  private final DataCells sums;
  private final DataCells whole;

  StandingWeights(
      LedgerSheet sheet,
      StandingLines lines,
      Job job,
      PermanentLoads loads,
      List<Standing.Ballast> ballast,
      SectionSheet sections,
      FigureSheet figures) {
    this.sheet = sheet;
    this.lines = lines;
    this.figures = figures;
    weight = new RangeSums(sheet.name());
    for (int i = 0; i < lines.edges().size(); i++) {
      byLine.add(
          new RangeSums[] {
            new RangeSums(sheet.name()), new RangeSums(sheet.name()), new RangeSums(sheet.name())
          });
    }
    memberWeights = writeMembers(job, sections);
    writeFinishes(loads.finishes());
    writeBallast(ballast);
    writeGiven(loads.given());
    sums = writeSums();
    whole =
        sheet.add(
            new DataTable(
                "Permanent weight",
                List.of(Column.wrapped("of", 14), Column.number("V", "weight", Dimension.FORCE)),
                List.of(List.of(LedgerCell.text("all permanent loads"), weight.cell()))));
  }

  private ProcedureCells writeMembers(Job job, SectionSheet sections) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Member member : job.frame().members()) {
      List<Segment> segments = job.frame().segmentsOf(member);
      List<InputCell> inputs =
          new ArrayList<>(
              List.of(
                  InputCell.shown(sections.property(member.section(), "A")),
                  InputCell.shown(sections.alloy(member.alloy(), "ρ")),
                  InputCell.shown(figures.number("g"))));
      Segment last = segments.get(segments.size() - 1);
      inputs.addAll(end(segments.get(0).first(), segments.get(0).start().offset()));
      inputs.addAll(end(last.second(), last.end().offset()));
      rows.add(new ProcedureTable.Row(List.of(member.name()), inputs));
    }
    ProcedureCells weights =
        sheet.add(
            new ProcedureTable(
                "Weight of members",
                MemberWeight.PROCEDURE.compile(),
                List.of(new ProcedureTable.Label("member", 28)),
                rows));
    weight.plus(weights, 0, rows.size(), "W");
    List<StandingLines.Row> beside = new ArrayList<>();
    for (int edge = 0; edge < lines.edges().size(); edge++) {
      for (int i = 0; i < rows.size(); i++) {
        List<InputCell> inputs = new ArrayList<>();
        inputs.add(InputCell.inline(weights.number(i, "W")));
        for (String symbol : ENDS) {
          inputs.add(InputCell.inline(weights.number(i, symbol)));
        }
        beside.add(new StandingLines.Row(edge, rows.get(i).labels(), inputs));
      }
    }
    if (!beside.isEmpty()) {
      add(
          lines.table("Members beside each line", LineWeight.PROCEDURE, List.of("member"), beside),
          rows.size());
    }
    return weights;
  }

  private List<InputCell> end(Node node, Vector offset) {
    if (offset.norm() == 0) {
      return lines.place(node);
    }
    Vector place = node.place().plus(offset);
    return List.of(
        InputCell.literal(place.x(), MOVED),
        InputCell.literal(place.y(), MOVED),
        InputCell.literal(place.z(), MOVED));
  }

  private void writeFinishes(List<FloorWeight> finishes) {
    if (finishes.isEmpty() || lines.edges().isEmpty()) {
      return;
    }
    ProcedureCells cells =
        lines.table(
            "Decking and finishes beside each line",
            FloorWeight.PROCEDURE,
            List.of("floor"),
            lines.everywhere(
                finishes,
                (edge, floor) ->
                    new StandingLines.Row(
                        edge,
                        List.of(floor.floor().name()),
                        lines.inputs(
                            floor,
                            InputCell.literal(floor.pressure(), JOB),
                            InputCell.literal(0, NO_SWAY)))));
    weight.plus(cells, 0, finishes.size(), "Q");
    add(cells, finishes.size());
  }

  private void writeBallast(List<Standing.Ballast> ballast) {
    if (ballast.isEmpty() || lines.edges().isEmpty()) {
      return;
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Standing.Ballast one : ballast) {
      rows.add(
          List.of(
              LedgerCell.text(one.name()),
              LedgerCell.given(one.mass()),
              LedgerCell.live(
                  "{m}*" + figures.number("g").from(sheet.name()),
                  one.mass() * figures.number("g").value()),
              LedgerCell.text(one.source().citation())));
    }
    DataCells masses =
        sheet.add(
            new DataTable(
                "Ballast",
                List.of(
                    Column.wrapped("ballast", 14),
                    Column.number("m", "mass", Dimension.MASS),
                    Column.number("W", "weight", Dimension.FORCE),
                    Column.wrapped(DataTable.SOURCE_HEADING, 44)),
                rows));
    List<StandingLines.Row> beside = new ArrayList<>();
    for (int edge = 0; edge < lines.edges().size(); edge++) {
      for (int i = 0; i < ballast.size(); i++) {
        Vector place = ballast.get(i).place();
        List<InputCell> inputs = new ArrayList<>();
        inputs.add(InputCell.shown(masses.number(i, "W")));
        inputs.addAll(StandingLines.place(place));
        inputs.addAll(StandingLines.place(place));
        beside.add(new StandingLines.Row(edge, List.of(ballast.get(i).name()), inputs));
      }
    }
    weight.plus(masses, 0, ballast.size(), "W");
    add(
        lines.table("Ballast beside each line", LineWeight.PROCEDURE, List.of("ballast"), beside),
        ballast.size());
  }

  private void writeGiven(List<Acting> given) {
    List<LineWeight> even = new ArrayList<>();
    List<PlacedForce> forces = new ArrayList<>();
    for (Acting one : given) {
      if (one instanceof LineWeight line) {
        even.add(line);
      } else if (one instanceof PlacedForce force) {
        forces.add(force);
      }
    }
    if (!even.isEmpty() && !lines.edges().isEmpty()) {
      ProcedureCells cells =
          lines.table(
              "Permanent loads of the job beside each line",
              LineWeight.PROCEDURE,
              List.of("load"),
              lines.everywhere(
                  even,
                  (edge, one) ->
                      new StandingLines.Row(
                          edge,
                          List.of(one.name()),
                          StandingLines.inputs(one, InputCell.literal(one.weight(), JOB)))));
      weight.plus(cells, 0, even.size(), "W");
      add(cells, even.size());
    }
    if (!forces.isEmpty() && !lines.edges().isEmpty()) {
      writeForces(forces);
    }
  }

  private void writeForces(List<PlacedForce> forces) {
    ProcedureCells cells =
        lines.table(
            "Permanent forces of the job about each line",
            PlacedForce.PROCEDURE,
            List.of("force"),
            lines.everywhere(
                forces,
                (edge, one) ->
                    new StandingLines.Row(
                        edge, List.of(one.name()), StandingLines.inputs(one, JOB))));
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (int row = 0; row < cells.rows(); row++) {
      NumberAt moment = cells.number(row, "M");
      NumberAt up = cells.number(row, "F_Z");
      NumberAt above = cells.number(row, "z");
      String m = moment.from(sheet.name());
      String f = up.from(sheet.name());
      rows.add(
          List.of(
              LedgerCell.text(forces.get(row % forces.size()).name()),
              LedgerCell.live("-" + f, -up.value()),
              LedgerCell.live("MAX(0,-" + m + ")", Math.max(0, -moment.value())),
              LedgerCell.live("MAX(0," + m + ")", Math.max(0, moment.value())),
              LedgerCell.live(
                  "MAX(0,-" + f + ")*" + above.from(sheet.name()),
                  Math.max(0, -up.value()) * above.value())));
    }
    DataCells parts =
        sheet.add(
            new DataTable(
                "Permanent forces, holding or tipping as a whole",
                List.of(
                    Column.wrapped("force", 14),
                    Column.number("W", "downward", Dimension.FORCE),
                    Column.number("M_in", "holds", Dimension.MOMENT),
                    Column.number("M_out", "tips", Dimension.MOMENT),
                    Column.number("M_z", "by height", Dimension.MOMENT)),
                rows));
    weight.plus(parts, 0, forces.size(), "W");
    for (int edge = 0; edge < byLine.size(); edge++) {
      for (int k = 0; k < SUMS.size(); k++) {
        byLine.get(edge)[k].plus(parts, edge * forces.size(), forces.size(), SUMS.get(k));
      }
    }
  }

  private void add(ProcedureCells cells, int perLine) {
    for (int edge = 0; edge < byLine.size(); edge++) {
      for (int k = 0; k < SUMS.size(); k++) {
        byLine.get(edge)[k].plus(cells, edge * perLine, perLine, SUMS.get(k));
      }
    }
  }

  private DataCells writeSums() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (int edge = 0; edge < byLine.size(); edge++) {
      RangeSums[] own = byLine.get(edge);
      rows.add(
          List.of(
              LedgerCell.text(lines.edges().get(edge).name()),
              own[0].cell(),
              own[1].cell(),
              own[2].cell()));
    }
    return sheet.add(
        new DataTable(
            "All permanent loads about each line, without factors",
            List.of(
                Column.wrapped("line", 14),
                Column.number("M_in", "parts that hold", Dimension.MOMENT),
                Column.number("M_out", "parts that tip", Dimension.MOMENT),
                Column.number("M_z", "weight times height", Dimension.MOMENT)),
            rows));
  }

  /** A sum over all permanent loads about a line: M_in, M_out or M_z. */
  NumberAt sum(int edge, String symbol) {
    return sums.number(edge, symbol);
  }

  /** The weight of all permanent loads. */
  NumberAt weight() {
    return whole.number(0, "V");
  }

  /** The table of the weight of members. */
  ProcedureCells memberWeights() {
    return memberWeights;
  }
}
