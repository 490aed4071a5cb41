package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import spanledger.analysis.BasicDeformations;
import spanledger.analysis.EndForces;
import spanledger.analysis.NodeForces;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * Deformations, end forces and node forces of every segment in every case, live from the movements.
 */
final class EndForceSheets implements SegmentForces {

  private static final Set<String> OF_STIFFNESS = Set.of("E", "I_y", "I_z");

  /** Deformations, each with the force that does work on it. */
  private static final List<String> WORKING =
      List.of(
          "e", "F_x2", "φ", "M_x2", "θ_y1", "M_y1", "θ_y2", "M_y2", "θ_z1", "M_z1", "θ_z2", "M_z2");

  private final Frame frame;
  private final SolvedGroup group;
  private final ProcedureCells deformations;
  private final ProcedureCells endForces;
  private final ProcedureCells nodeForces;

  /** Opens the sheet of a table by its usual name, title and purpose, and says how it is headed. */
  private interface Places {
    Place of(String name, String title, String purpose);
  }

  /** The sheet of a table, and the heading over the table. */
  private record Place(LedgerSheet sheet, String heading) {}

  private EndForceSheets(
      Places places,
      SolvedGroup group,
      SegmentNumbers segments,
      SolvedLoads loads,
      MovementSheet movements) {
    this.frame = segments.frame();
    this.group = group;
    deformations =
        write(
            places,
            SheetNames.DEFORMATIONS,
            "Deformations of the segments",
            "From the movements of the nodes.",
            BasicDeformations.PROCEDURE.compile(),
            (one, segment) ->
                symbol -> deformationInput(one, segment, symbol, segments, movements));
    endForces =
        write(
            places,
            SheetNames.END_FORCES,
            "End forces of the segments",
            "What the nodes exert on the segment's ends, in its axes: stiffness times deformation, plus"
                + " the fixed-end part of its loads.",
            EndForces.PROCEDURE.compile(),
            (one, segment) -> symbol -> endForceInput(one, segment, symbol, segments, loads));
    nodeForces =
        write(
            places,
            SheetNames.NODE_FORCES,
            "Node forces of the segments",
            "The end forces in global axes, at the nodes.",
            NodeForces.PROCEDURE.compile(),
            (one, segment) ->
                symbol ->
                    InputCell.inline(
                        symbol.startsWith("F_") || symbol.startsWith("M_")
                            ? endForces.number(row(one, segment), symbol)
                            : segments.geometry(segment, symbol)));
  }

  static EndForceSheets write(
      LedgerWorkbook workbook,
      SolvedGroup group,
      SegmentNumbers segments,
      SolvedLoads loads,
      MovementSheet movements) {
    Places places =
        (name, title, purpose) -> {
          LedgerSheet sheet = workbook.sheet(group.sheet(name));
          sheet.title(title, purpose);
          return new Place(sheet, "");
        };
    return new EndForceSheets(places, group, segments, loads, movements);
  }

  /** The same below each other on a sheet that has a title. */
  static EndForceSheets write(
      LedgerSheet sheet,
      SolvedGroup group,
      SegmentNumbers segments,
      SolvedLoads loads,
      MovementSheet movements) {
    return new EndForceSheets(
        (name, title, purpose) -> new Place(sheet, title), group, segments, loads, movements);
  }

  private ProcedureCells write(
      Places places,
      String name,
      String title,
      String purpose,
      CompiledProcedure procedure,
      BiFunction<Solved, Segment, java.util.function.Function<String, InputCell>> inputs) {
    Place place = places.of(name, title, purpose);
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Segment segment : frame.segments()) {
        rows.add(
            new ProcedureTable.Row(
                List.of(one.name(), segment.name()),
                Inputs.of(procedure, inputs.apply(one, segment))));
      }
    }
    return place
        .sheet()
        .add(
            new ProcedureTable(
                place.heading(),
                procedure,
                List.of(
                    new ProcedureTable.Label(group.what(), group.width()),
                    new ProcedureTable.Label("segment", 22)),
                rows));
  }

  private static InputCell deformationInput(
      Solved one,
      Segment segment,
      String symbol,
      SegmentNumbers segments,
      MovementSheet movements) {
    for (Freedom freedom : Freedom.values()) {
      String movement = MovementSheet.SYMBOLS[freedom.ordinal()];
      if (symbol.equals(movement + "1")) {
        return InputCell.inline(movements.number(one, segment.first(), freedom));
      }
      if (symbol.equals(movement + "2")) {
        return InputCell.inline(movements.number(one, segment.second(), freedom));
      }
    }
    return InputCell.inline(segments.geometry(segment, symbol));
  }

  private InputCell endForceInput(
      Solved one, Segment segment, String symbol, SegmentNumbers segments, SolvedLoads loads) {
    if (LoadSumSheet.SYMBOLS.contains(symbol)) {
      return InputCell.inline(loads.sum(one, segment, symbol));
    } else if (symbol.equals("L")) {
      return InputCell.inline(segments.geometry(segment, symbol));
    } else if (symbol.startsWith("s_") || OF_STIFFNESS.contains(symbol)) {
      return InputCell.inline(segments.stiffness(segment, symbol));
    }
    return InputCell.inline(deformations.number(row(one, segment), symbol));
  }

  private int row(Solved one, Segment segment) {
    return one.index() * frame.segments().size() + segment.index();
  }

  @Override
  public NumberAt endForce(Solved one, Segment segment, String symbol) {
    return endForces.number(row(one, segment), symbol);
  }

  @Override
  public List<NumberAt> takenFrom(Solved one, Node node, Freedom freedom) {
    String axis = freedom.isShift() ? "R_" : "S_";
    String symbol = axis + "XYZ".charAt(freedom.ordinal() % 3);
    List<NumberAt> taken = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      if (segment.first().name().equals(node.name())) {
        taken.add(nodeForces.number(row(one, segment), symbol + "1"));
      }
      if (segment.second().name().equals(node.name())) {
        taken.add(nodeForces.number(row(one, segment), symbol + "2"));
      }
    }
    return taken;
  }

  ProcedureCells endForceTable() {
    return endForces;
  }

  /** The work of the forces of unloaded segments on their deformations, N·mm. */
  Sums strainWork(Solved one, String sheet) {
    Sums sum = new Sums(sheet);
    for (int i = 0; i < WORKING.size(); i += 2) {
      double total = 0;
      for (Segment segment : frame.segments()) {
        int row = row(one, segment);
        total += deformations.value(row, WORKING.get(i)) * endForces.value(row, WORKING.get(i + 1));
      }
      sum.plusProducts(
          column(deformations, one, WORKING.get(i)),
          column(endForces, one, WORKING.get(i + 1)),
          total);
    }
    return sum;
  }

  /** The cells of a solution in a table. */
  private CellRange column(ProcedureCells cells, Solved one, String symbol) {
    int first = one.index() * frame.segments().size();
    int last = first + frame.segments().size() - 1;
    return cells.number(first, symbol).at().to(cells.number(last, symbol).at());
  }

  /** A deformation. */
  NumberAt deformation(Solved one, Segment segment, String symbol) {
    return deformations.number(row(one, segment), symbol);
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    return List.of(deformations, endForces, nodeForces);
  }
}
