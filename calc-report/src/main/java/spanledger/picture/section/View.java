package spanledger.picture.section;

import java.util.ArrayList;
import java.util.List;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Extent;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;

/**
 * How a section lies on the paper: y to the right, z up.
 *
 * @param scale units of the paper per mm
 * @param left where y = 0 is
 * @param base where z = 0 is
 * @param box what the section takes of the paper
 */
record View(double scale, double left, double base, Box box) {

  private static final double FLATNESS = Math.PI / 24;

  /**
   * The largest view that fits.
   *
   * @param points of interest outside of the outlines, shown as well
   * @param room on the paper
   */
  static View of(List<Outline> parts, List<Point> points, Box room) {
    List<Edge> edges = parts.stream().flatMap(part -> part.edges().stream()).toList();
    Extent y = Extent.of(edges, new Point(1, 0));
    Extent z = Extent.of(edges, new Point(0, 1));
    double y1 = y.least();
    double y2 = y.greatest();
    double z1 = z.least();
    double z2 = z.greatest();
    for (Point point : points) {
      y1 = Math.min(y1, point.y());
      y2 = Math.max(y2, point.y());
      z1 = Math.min(z1, point.z());
      z2 = Math.max(z2, point.z());
    }
    double width = room.right() - room.left();
    double height = room.bottom() - room.top();
    double scale = Math.min(width / (y2 - y1), height / (z2 - z1));
    double left = room.left() + (width - scale * (y2 - y1)) / 2 - scale * y1;
    double base = room.top() + scale * z2;
    return new View(
        scale,
        left,
        base,
        new Box(
            left + scale * y.least(),
            base - scale * z.greatest(),
            left + scale * y.greatest(),
            base - scale * z.least()));
  }

  Spot spot(Point point) {
    return new Spot(left + scale * point.y(), base - scale * point.z());
  }

  /** The outline with its holes. */
  Trace trace(Outline outline) {
    List<Trace.Move> moves = new ArrayList<>();
    outline
        .rings()
        .forEach(
            ring -> {
              moves.add(new Trace.Start(spot(ring.edges().get(0).start())));
              ring.edges().forEach(edge -> moves.add(move(edge)));
              moves.add(new Trace.Close());
            });
    return new Trace(moves);
  }

  /** A run of edges. */
  Trace trace(List<Edge> edges) {
    List<Trace.Move> moves = new ArrayList<>();
    moves.add(new Trace.Start(spot(edges.get(0).start())));
    edges.forEach(edge -> moves.add(move(edge)));
    return new Trace(moves);
  }

  private Trace.Move move(Edge edge) {
    Spot end = spot(edge.end());
    // What turns left in the section turns against the clock on the paper.
    return edge instanceof ArcEdge arc ? new Trace.Arc(end, -arc.bulge()) : new Trace.Line(end);
  }

  /** The edge as a line through places on the paper. */
  List<Spot> spots(Edge edge) {
    int parts = (int) Math.max(1, Math.ceil(Math.abs(edge.sweep()) / FLATNESS));
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i <= parts; i++) {
      spots.add(spot(edge.at((double) i / parts)));
    }
    return spots;
  }
}
