package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.ArcReach;
import spanledger.section.outline.AxisDistance;
import spanledger.section.outline.BendingModuli;
import spanledger.section.outline.ElasticModulus;
import spanledger.section.outline.PlasticLine;
import spanledger.section.outline.PlasticModulus;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Bending about one axis through the centroid: extreme fibres, elastic and plastic moduli. */
final class AxisTables {

  private static final CompiledProcedure DISTANCE = AxisDistance.PROCEDURE.compile();
  private static final CompiledProcedure REACH = ArcReach.PROCEDURE.compile();
  private static final CompiledProcedure MODULUS = ElasticModulus.PROCEDURE.compile();

  /**
   * An axis.
   *
   * @param name y, z, 1 or 2
   * @param angle from y
   * @param centroidY from the origin of the calculation
   * @param centroidZ from the origin of the calculation
   * @param area A
   * @param secondMoment about the axis
   * @param moduli as the program found them
   */
  record Axis(
      String name,
      NumberAt angle,
      NumberAt centroidY,
      NumberAt centroidZ,
      NumberAt area,
      NumberAt secondMoment,
      BendingModuli moduli) {}

  private final List<ProcedureCells> tables = new ArrayList<>();
  private final ProcedureCells elastic;
  private final PlasticTables plastic;

  private AxisTables(LedgerSheet sheet, VertexTable vertices, BoundaryTables boundary, Axis axis) {
    String name = "axis " + axis.name();
    ProcedureCells distances = distances(sheet, vertices, axis);
    tables.add(distances);
    Optional<ProcedureCells> reaches = reaches(sheet, vertices, boundary, axis);
    reaches.ifPresent(tables::add);
    elastic =
        sheet.add(
            oneRow(
                "Elastic moduli about " + name,
                MODULUS,
                name,
                List.of(
                    InputCell.shown(axis.secondMoment()),
                    farthest(sheet, distances, reaches, true),
                    farthest(sheet, distances, reaches, false))));
    plastic = PlasticTables.write(sheet, vertices, boundary, axis);
    tables.addAll(plastic.tables());
  }

  static AxisTables write(
      LedgerSheet sheet, VertexTable vertices, BoundaryTables boundary, Axis axis) {
    return new AxisTables(sheet, vertices, boundary, axis);
  }

  /** A table of one case. */
  static ProcedureTable oneRow(
      String title, CompiledProcedure procedure, String label, List<InputCell> inputs) {
    return new ProcedureTable(
        title,
        procedure,
        List.of(new ProcedureTable.Label("of", 18)),
        List.of(new ProcedureTable.Row(List.of(label), inputs)));
  }

  private static ProcedureCells distances(LedgerSheet sheet, VertexTable vertices, Axis axis) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int v = 0; v < vertices.edges().size(); v++) {
      rows.add(
          new ProcedureTable.Row(
              List.of("vertex " + (v + 1)),
              List.of(
                  InputCell.inline(vertices.coordinate(v, "y_o")),
                  InputCell.inline(vertices.coordinate(v, "z_o")),
                  InputCell.inline(axis.centroidY()),
                  InputCell.inline(axis.centroidZ()),
                  InputCell.inline(axis.angle()))));
    }
    return sheet.add(
        new ProcedureTable(
            "Vertices from axis " + axis.name(),
            DISTANCE,
            List.of(new ProcedureTable.Label("vertex", 18)),
            rows));
  }

  private static Optional<ProcedureCells> reaches(
      LedgerSheet sheet, VertexTable vertices, BoundaryTables boundary, Axis axis) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    int arc = 0;
    for (int e = 0; e < vertices.edges().size(); e++) {
      if (vertices.edges().get(e) instanceof ArcEdge) {
        List<InputCell> inputs = new ArrayList<>();
        for (String symbol : List.of("r", "φ", "n_y", "n_z", "y_c", "z_c")) {
          inputs.add(InputCell.inline(boundary.arc(arc, symbol)));
        }
        inputs.add(InputCell.inline(axis.centroidY()));
        inputs.add(InputCell.inline(axis.centroidZ()));
        inputs.add(InputCell.inline(axis.angle()));
        rows.add(new ProcedureTable.Row(List.of(vertices.name(e)), inputs));
        arc++;
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            sheet.add(
                new ProcedureTable(
                    "Arcs from axis " + axis.name(),
                    REACH,
                    List.of(new ProcedureTable.Label("arc", 18)),
                    rows)));
  }

  private static InputCell farthest(
      LedgerSheet sheet,
      ProcedureCells distances,
      Optional<ProcedureCells> reaches,
      boolean positive) {
    int sign = positive ? 1 : -1;
    String symbol = positive ? "v_+" : "v_-";
    double value = 0;
    for (int row = 0; row < distances.rows(); row++) {
      value = Math.max(value, sign * distances.value(row, "v"));
    }
    String ranges = distances.column("v").from(sheet.name());
    if (reaches.isPresent()) {
      ProcedureCells table = reaches.get();
      for (int row = 0; row < table.rows(); row++) {
        value = Math.max(value, sign * table.value(row, symbol));
      }
      ranges += "," + table.column(symbol).from(sheet.name());
    }
    String formula = positive ? "MAX(" + ranges + ")" : "-MIN(" + ranges + ")";
    return InputCell.live(formula, value, "the farthest of vertices and arcs above");
  }

  /** The larger of both fibre distances. */
  List<NumberAt> fibres() {
    return List.of(elastic.number(0, "e_+"), elastic.number(0, "e_-"));
  }

  NumberAt elasticModulus() {
    return elastic.number(0, "W_el");
  }

  NumberAt plasticModulus() {
    return plastic.modulus();
  }

  /** What the areas on both sides of the plastic neutral axis differ by, relative. */
  NumberAt plasticResidual() {
    return plastic.residual();
  }

  List<ProcedureCells> tables() {
    return tables;
  }

  /** Every procedure used. */
  List<Procedure> procedures() {
    List<Procedure> procedures = new ArrayList<>();
    tables.forEach(table -> procedures.add(table.procedure().procedure()));
    procedures.add(ElasticModulus.PROCEDURE);
    procedures.add(PlasticLine.PROCEDURE);
    procedures.add(PlasticModulus.PROCEDURE);
    return procedures;
  }
}
