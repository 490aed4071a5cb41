package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/** The vertices of an outline as given, and from an origin near the section. */
final class VertexTable {

  private static final Source ORIGIN =
      Source.derived("Chosen near the middle, so that digits are kept; any other gives the same");

  private final List<Edge> edges;
  private final int[] next;
  private final DataCells cells;
  private final DataCells origin;

  private VertexTable(LedgerSheet sheet, Outline outline, Source source) {
    edges = outline.edges();
    next = new int[edges.size()];
    Point middle = PlaneProperties.origin(outline);
    origin =
        sheet.add(
            new DataTable(
                "Origin of the calculation",
                List.of(
                    Column.text("", 6),
                    Column.text("point", 18),
                    Column.number("y", "as given", Dimension.LENGTH).withSource(ORIGIN),
                    Column.number("z", "as given", Dimension.LENGTH).withSource(ORIGIN)),
                List.of(
                    List.of(
                        LedgerCell.blank(),
                        LedgerCell.text("origin"),
                        LedgerCell.given(middle.y()),
                        LedgerCell.given(middle.z())))));
    String y0 = origin("y").from(sheet.name());
    String z0 = origin("z").from(sheet.name());
    List<List<LedgerCell>> rows = new ArrayList<>();
    int first = 0;
    List<Ring> rings = outline.rings();
    for (int r = 0; r < rings.size(); r++) {
      int n = rings.get(r).edges().size();
      for (int i = 0; i < n; i++) {
        Edge edge = rings.get(r).edges().get(i);
        next[first + i] = first + (i + 1) % n;
        rows.add(
            List.of(
                LedgerCell.count(first + i + 1),
                LedgerCell.text(r == 0 ? "outer" : "hole " + r),
                LedgerCell.given(edge.start().y()),
                LedgerCell.given(edge.start().z()),
                LedgerCell.given(edge instanceof ArcEdge arc ? arc.bulge() : 0),
                LedgerCell.live("{y}-" + y0, edge.start().y() - middle.y()),
                LedgerCell.live("{z}-" + z0, edge.start().z() - middle.z()),
                LedgerCell.text(edge.face())));
      }
      first += n;
    }
    List<Column> columns =
        List.of(
            Column.text("vertex", 6),
            Column.text("ring", 18),
            Column.number("y", "as given", Dimension.LENGTH).withSource(source),
            Column.number("z", "as given", Dimension.LENGTH).withSource(source),
            Column.number("bulge", "of the edge to the next vertex; 0 if straight", Dimension.NONE)
                .withSource(source),
            Column.number("y_o", "y from the origin", Dimension.LENGTH),
            Column.number("z_o", "z from the origin", Dimension.LENGTH),
            Column.text("face", 24));
    cells = sheet.add(new DataTable("Vertices, material to the left of each edge", columns, rows));
  }

  static VertexTable write(LedgerSheet sheet, Outline outline, Source source) {
    return new VertexTable(sheet, outline, source);
  }

  List<Edge> edges() {
    return edges;
  }

  /** A coordinate of a vertex from the origin: {@code y_o} or {@code z_o}. */
  NumberAt coordinate(int vertex, String heading) {
    return cells.number(vertex, heading);
  }

  /** The vertex at the end of an edge; the one at its start has the number of the edge. */
  int end(int edge) {
    return next[edge];
  }

  /** The bulge of an edge, if it is an arc. */
  Optional<NumberAt> bulge(int edge) {
    return edges.get(edge) instanceof ArcEdge
        ? Optional.of(cells.number(edge, "bulge"))
        : Optional.empty();
  }

  /** How many arcs there are before an edge. */
  int arcNumber(int edge) {
    return (int) edges.subList(0, edge).stream().filter(ArcEdge.class::isInstance).count();
  }

  /** Where the origin is, in the coordinates of the outline: y or z. */
  NumberAt origin(String axis) {
    return origin.number(0, axis);
  }

  /** The whole boundary, from the origin. */
  List<BoundaryTables.Piece> pieces() {
    List<BoundaryTables.Piece> pieces = new ArrayList<>();
    for (int e = 0; e < edges.size(); e++) {
      pieces.add(
          new BoundaryTables.Piece(
              name(e),
              List.of(
                  InputCell.shown(coordinate(e, "y_o")),
                  InputCell.shown(coordinate(e, "z_o")),
                  InputCell.shown(coordinate(end(e), "y_o")),
                  InputCell.shown(coordinate(end(e), "z_o"))),
              bulge(e).map(InputCell::shown)));
    }
    return pieces;
  }

  /** What an edge is called. */
  String name(int edge) {
    return (edge + 1) + " to " + (end(edge) + 1);
  }
}
