package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.procedure.CompiledProcedure;
import spanledger.quantity.Dimension;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.HalfBoundary;
import spanledger.section.outline.PlasticLine;
import spanledger.section.outline.PlasticModulus;
import spanledger.section.outline.Point;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/**
 * The plastic modulus about one axis: the boundary on the positive side of the neutral axis, its
 * integrals, and the proof that the neutral axis halves the area.
 */
final class PlasticTables {

  private static final CompiledProcedure LINE = PlasticLine.PROCEDURE.compile();
  private static final CompiledProcedure MODULUS = PlasticModulus.PROCEDURE.compile();
  private static final String SEARCH = "ε below; found by search";

  private final LedgerSheet sheet;
  private final VertexTable vertices;
  private final AxisTables.Axis axis;
  private final ProcedureCells line;
  private final List<HalfBoundary.Piece> pieces;
  private final List<Cut> cuts = new ArrayList<>();
  private final BoundaryTables boundary;
  private final ProcedureCells modulus;

  /** A place where the neutral axis crosses an edge, from the origin of the calculation. */
  private record Cut(int edge, double at, Point place) {}

  private PlasticTables(
      LedgerSheet sheet, VertexTable vertices, BoundaryTables whole, AxisTables.Axis axis) {
    this.sheet = sheet;
    this.vertices = vertices;
    this.axis = axis;
    line =
        sheet.add(
            AxisTables.oneRow(
                "Plastic neutral axis parallel to axis " + axis.name(),
                LINE,
                "axis " + axis.name(),
                List.of(
                    InputCell.shown(axis.centroidY()),
                    InputCell.shown(axis.centroidZ()),
                    InputCell.shown(axis.angle()),
                    InputCell.solved(axis.moduli().plasticAxis(), SEARCH))));
    Point origin = new Point(vertices.origin("y").value(), vertices.origin("z").value());
    Point through = new Point(line.number(0, "y_n").value(), line.number(0, "z_n").value());
    pieces =
        HalfBoundary.leftOf(
            vertices.edges(), origin.plus(through), Point.direction(axis.angle().value()));
    for (HalfBoundary.Piece piece : pieces) {
      if (piece.from() > 0) {
        cuts.add(new Cut(piece.edge(), piece.from(), piece.part().start().minus(origin)));
      }
      if (piece.to() < 1) {
        cuts.add(new Cut(piece.edge(), piece.to(), piece.part().end().minus(origin)));
      }
    }
    Optional<DataCells> places = cuts.isEmpty() ? Optional.empty() : Optional.of(writeCuts());
    boundary =
        BoundaryTables.write(
            sheet,
            " on the positive side of the neutral axis, from a point of it",
            pieces.stream().map(piece -> piece(piece, places)).toList());
    writeRadii(whole);
    modulus =
        sheet.add(
            AxisTables.oneRow(
                "Plastic modulus about axis " + axis.name(),
                MODULUS,
                "axis " + axis.name(),
                List.of(
                    InputCell.shown(axis.area()),
                    sum("ΔA"),
                    sum("ΔS_z"),
                    sum("ΔS_y"),
                    InputCell.shown(axis.angle()),
                    InputCell.shown(line.number(0, "v_0")))));
  }

  static PlasticTables write(
      LedgerSheet sheet, VertexTable vertices, BoundaryTables whole, AxisTables.Axis axis) {
    return new PlasticTables(sheet, vertices, whole, axis);
  }

  private InputCell sum(String symbol) {
    BoundaryTables.Total total = boundary.sum(symbol, sheet.name());
    return InputCell.live(total.formula(), total.value(), "sum over the pieces above");
  }

  private DataCells writeCuts() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    String yn = line.number(0, "y_n").from(sheet.name());
    String zn = line.number(0, "z_n").from(sheet.name());
    String angle = axis.angle().from(sheet.name());
    for (int i = 0; i < cuts.size(); i++) {
      Cut cut = cuts.get(i);
      double offAxis =
          (cut.place().z() - line.number(0, "z_n").value()) * Math.cos(axis.angle().value())
              - (cut.place().y() - line.number(0, "y_n").value()) * Math.sin(axis.angle().value());
      rows.add(
          List.of(
              LedgerCell.count(i + 1),
              LedgerCell.text(vertices.name(cut.edge())),
              LedgerCell.solved(cut.place().y()),
              LedgerCell.solved(cut.place().z()),
              LedgerCell.residual(
                  "({z}-" + zn + ")*COS(" + angle + ")-({y}-" + yn + ")*SIN(" + angle + ")",
                  offAxis),
              offEdge(cut)));
    }
    return sheet.add(
        new DataTable(
            "Where the neutral axis cuts the boundary",
            List.of(
                Column.text("cut", 6),
                Column.text("edge", 18),
                Column.number("y", "found by search; from the origin", Dimension.LENGTH),
                Column.number("z", "found by search; from the origin", Dimension.LENGTH),
                Column.number("off the axis", "zero but for rounding", Dimension.LENGTH),
                Column.number("off the edge", "zero but for rounding", Dimension.LENGTH)),
            rows));
  }

  /** The distance of a cut from the line through its edge. */
  private LedgerCell offEdge(Cut cut) {
    Edge edge = vertices.edges().get(cut.edge());
    NumberAt y1 = vertices.coordinate(cut.edge(), "y_o");
    NumberAt z1 = vertices.coordinate(cut.edge(), "z_o");
    NumberAt y2 = vertices.coordinate(vertices.end(cut.edge()), "y_o");
    NumberAt z2 = vertices.coordinate(vertices.end(cut.edge()), "z_o");
    String here = sheet.name();
    if (edge instanceof ArcEdge) {
      return LedgerCell.text("see the radii below");
    }
    double dy = y2.value() - y1.value();
    double dz = z2.value() - z1.value();
    double off =
        ((cut.place().y() - y1.value()) * dz - (cut.place().z() - z1.value()) * dy)
            / Math.hypot(dy, dz);
    String along = "(" + y2.from(here) + "-" + y1.from(here) + ")";
    String up = "(" + z2.from(here) + "-" + z1.from(here) + ")";
    return LedgerCell.residual(
        "(({y}-"
            + y1.from(here)
            + ")*"
            + up
            + "-({z}-"
            + z1.from(here)
            + ")*"
            + along
            + ")/SQRT("
            + along
            + "^2+"
            + up
            + "^2)",
        off);
  }

  private BoundaryTables.Piece piece(HalfBoundary.Piece piece, Optional<DataCells> places) {
    List<InputCell> ends = new ArrayList<>();
    int start = piece.edge();
    int end = vertices.end(piece.edge());
    ends.add(fromAxis(place(piece, piece.from(), start, "y", places), "y_n"));
    ends.add(fromAxis(place(piece, piece.from(), start, "z", places), "z_n"));
    ends.add(fromAxis(place(piece, piece.to(), end, "y", places), "y_n"));
    ends.add(fromAxis(place(piece, piece.to(), end, "z", places), "z_n"));
    Optional<InputCell> bulge =
        piece.part() instanceof ArcEdge arc
            ? Optional.of(
                piece.isWhole()
                    ? InputCell.shown(vertices.bulge(piece.edge()).orElseThrow())
                    : InputCell.solved(arc.bulge(), "the radii below; found by search"))
            : Optional.empty();
    return new BoundaryTables.Piece(
        vertices.name(piece.edge()) + (piece.isWhole() ? "" : ", cut"), ends, bulge);
  }

  private NumberAt place(
      HalfBoundary.Piece piece,
      double at,
      int vertex,
      String axisName,
      Optional<DataCells> places) {
    if (at == 0 || at == 1) {
      return vertices.coordinate(vertex, axisName + "_o");
    }
    for (int i = 0; i < cuts.size(); i++) {
      if (cuts.get(i).edge() == piece.edge() && cuts.get(i).at() == at) {
        return places.orElseThrow().number(i, axisName);
      }
    }
    throw new IllegalStateException("A cut of edge " + piece.edge() + " is missing.");
  }

  private InputCell fromAxis(NumberAt place, String symbol) {
    NumberAt from = line.number(0, symbol);
    return InputCell.live(
        place.from(sheet.name()) + "-" + from.from(sheet.name()),
        place.value() - from.value(),
        "from the point of the neutral axis");
  }

  /** Cut arcs keep the circle of the whole: same centre and radius. */
  private void writeRadii(BoundaryTables whole) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    int row = 0;
    for (HalfBoundary.Piece piece : pieces) {
      if (!(piece.part() instanceof ArcEdge)) {
        continue;
      }
      if (!piece.isWhole()) {
        int arc = vertices.arcNumber(piece.edge());
        Sums radius = difference(boundary.arc(row, "r"), whole.arc(arc, "r"));
        Sums y = difference(boundary.arc(row, "y_c"), whole.arc(arc, "y_c"));
        Sums z = difference(boundary.arc(row, "z_c"), whole.arc(arc, "z_c"));
        rows.add(
            List.of(
                LedgerCell.text(vertices.name(piece.edge())),
                radius.residual(),
                y.plus(line.number(0, "y_n")).residual(),
                z.plus(line.number(0, "z_n")).residual()));
      }
      row++;
    }
    if (!rows.isEmpty()) {
      sheet.add(
          new DataTable(
              "Cut arcs against their circles: zero but for rounding",
              List.of(
                  Column.text("arc", 18),
                  Column.number("off in radius", "", Dimension.LENGTH),
                  Column.number("off in y", "of the centre", Dimension.LENGTH),
                  Column.number("off in z", "of the centre", Dimension.LENGTH)),
              rows));
    }
  }

  private Sums difference(NumberAt one, NumberAt other) {
    return new Sums(sheet.name()).plus(one).minus(other);
  }

  NumberAt modulus() {
    return modulus.number(0, "W_pl");
  }

  NumberAt residual() {
    return modulus.number(0, "ε");
  }

  List<ProcedureCells> tables() {
    return boundary.tables();
  }
}
