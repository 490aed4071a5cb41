package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.overturning.FloorWeight;
import spanledger.overturning.LineWeight;
import spanledger.overturning.PlacedForce;
import spanledger.overturning.PlateCorner;
import spanledger.overturning.StandingResult;
import spanledger.overturning.TippingEdge;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** The lines about which the structure may tip, and tables of what lies beside them. */
final class StandingLines {

  /** The columns of a line that every table beside it uses, in the order of its inputs. */
  private static final List<String> OF_LINE = List.of("X_1", "Y_1", "Z_1", "n_X", "n_Y", "t");

  private static final Source PLATE =
      Source.declared("base plate of the foot, and how it lies: jointDetails, jointChecks");

  private static final Source PLACE = Source.declared("place of the load");

  private final LedgerSheet sheet;
  private final List<TippingEdge> edges;
  private final NodeSheet nodes;
  private final Map<String, Integer> corners = new HashMap<>();
  private Optional<ProcedureCells> plates = Optional.empty();
  private final ProcedureCells cells;
  private final List<ProcedureCells> tables = new ArrayList<>();

  /**
   * A load beside a line.
   *
   * @param edge the line's number
   * @param labels what stands beside its numbers
   * @param inputs beyond those of the line
   */
  record Row(int edge, List<String> labels, List<InputCell> inputs) {}

  StandingLines(LedgerSheet sheet, StandingResult result, NodeSheet nodes) {
    this.sheet = sheet;
    this.edges = result.edges();
    this.nodes = nodes;
    writeCorners(result);
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (TippingEdge edge : edges) {
      List<InputCell> inputs = new ArrayList<>(end(edge.first()));
      inputs.addAll(end(edge.second()));
      rows.add(new ProcedureTable.Row(List.of(edge.name()), inputs));
    }
    cells =
        sheet.add(
            new ProcedureTable(
                "Lines through the feet about which it may tip",
                TippingEdge.PROCEDURE.compile(),
                List.of(new ProcedureTable.Label("line", 28)),
                rows));
    tables.add(cells);
  }

  /** The corners of base plates that lines go through. */
  private void writeCorners(StandingResult result) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (TippingEdge edge : edges) {
      // Every corner begins one line of the hull.
      result
          .corner(edge.first())
          .ifPresent(
              corner -> {
                List<InputCell> inputs = new ArrayList<>(place(corner.foot()));
                corner.own().forEach(size -> inputs.add(InputCell.literal(size, PLATE)));
                corners.put(edge.first().name(), rows.size());
                rows.add(new ProcedureTable.Row(List.of(edge.first().name()), inputs));
              });
    }
    if (!rows.isEmpty()) {
      ProcedureCells table =
          sheet.add(
              new ProcedureTable(
                  "Corners of the base plates on which it stands",
                  PlateCorner.PROCEDURE.compile(),
                  List.of(new ProcedureTable.Label("corner", 44)),
                  rows));
      tables.add(table);
      plates = Optional.of(table);
    }
  }

  /** Where a line begins or ends: a foot, or the corner of its plate. */
  private List<InputCell> end(Node node) {
    Integer row = corners.get(node.name());
    return row == null
        ? place(node)
        : List.of(
            InputCell.shown(plates.orElseThrow().number(row, "X")),
            InputCell.shown(plates.orElseThrow().number(row, "Y")),
            InputCell.shown(plates.orElseThrow().number(row, "Z")));
  }

  List<TippingEdge> edges() {
    return edges;
  }

  /** All tables written here. */
  List<ProcedureCells> tables() {
    return tables;
  }

  /** The coordinates of a node. */
  List<InputCell> place(Node node) {
    return List.of(
        InputCell.shown(nodes.place(node, 0)),
        InputCell.shown(nodes.place(node, 1)),
        InputCell.shown(nodes.place(node, 2)));
  }

  /** The coordinates of a place that may be no node. */
  static List<InputCell> place(Vector place) {
    return List.of(
        InputCell.literal(place.x(), PLACE),
        InputCell.literal(place.y(), PLACE),
        InputCell.literal(place.z(), PLACE));
  }

  /** A table of loads, the rows of each line one after another in the order given. */
  ProcedureCells table(String title, Procedure procedure, List<String> headings, List<Row> loads) {
    List<ProcedureTable.Label> labels = new ArrayList<>();
    headings.forEach(heading -> labels.add(new ProcedureTable.Label(heading, 28)));
    List<ProcedureTable.Row> rows = new ArrayList<>();
    CompiledProcedure compiled = procedure.compile();
    for (Row load : loads) {
      List<InputCell> inputs = new ArrayList<>();
      for (String symbol : OF_LINE) {
        inputs.add(InputCell.inline(cells.number(load.edge(), symbol)));
      }
      inputs.addAll(load.inputs());
      List<String> words = new ArrayList<>(List.of(edges.get(load.edge()).name()));
      words.addAll(load.labels());
      rows.add(new ProcedureTable.Row(words, inputs));
    }
    labels.add(0, new ProcedureTable.Label("line", 28));
    ProcedureCells table = sheet.add(new ProcedureTable(title, compiled, labels, rows));
    tables.add(table);
    return table;
  }

  /** Every item beside every line. */
  <T> List<Row> everywhere(List<T> items, BiFunction<Integer, T, Row> row) {
    List<Row> rows = new ArrayList<>();
    for (int edge = 0; edge < edges.size(); edge++) {
      for (T item : items) {
        rows.add(row.apply(edge, item));
      }
    }
    return rows;
  }

  /** The inputs of a weight along a line. */
  static List<InputCell> inputs(LineWeight weight, InputCell size) {
    List<InputCell> inputs = new ArrayList<>(List.of(size));
    inputs.addAll(place(weight.from()));
    inputs.addAll(place(weight.to()));
    return inputs;
  }

  /** The inputs of a load on a floor. */
  List<InputCell> inputs(FloorWeight weight, InputCell pressure, InputCell sway) {
    List<InputCell> inputs = new ArrayList<>(List.of(pressure, sway));
    for (int corner : new int[] {0, 1, 3}) {
      inputs.addAll(place(weight.floor().corners().get(corner)));
    }
    return inputs;
  }

  /** The inputs of a force. */
  static List<InputCell> inputs(PlacedForce force, Source source) {
    List<InputCell> inputs = new ArrayList<>();
    for (Vector vector : List.of(force.force(), force.couple())) {
      inputs.add(InputCell.literal(vector.x(), source));
      inputs.add(InputCell.literal(vector.y(), source));
      inputs.add(InputCell.literal(vector.z(), source));
    }
    inputs.addAll(place(force.place()));
    return inputs;
  }
}
