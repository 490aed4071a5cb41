package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Vector;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/** A frame drawn as it moves, its movements enlarged. */
final class MovedFrame {

  private static final Pen MOVED = Pen.full(Ink.BLACK, 1.7);

  private final List<SegmentShape> shapes;
  private final Page page;
  private final Placing placing;

  MovedFrame(List<SegmentShape> shapes, Page page, Placing placing) {
    this.shapes = shapes;
    this.page = page;
    this.placing = placing;
  }

  /**
   * A place that moves.
   *
   * @param shape the segment
   * @param x from its start, mm
   * @param size of the movement, mm
   */
  record Farthest(SegmentShape shape, double x, double size) {}

  /** What moves most. */
  Farthest farthest() {
    Farthest farthest = new Farthest(shapes.get(0), 0, 0);
    for (SegmentShape shape : shapes) {
      for (double x : shape.places()) {
        double size = shape.movement(x).norm();
        if (size > farthest.size() * (1 + 1e-9)) {
          farthest = new Farthest(shape, x, size);
        }
      }
    }
    return farthest;
  }

  /** Where a place comes to lie on the paper. */
  Spot spot(SegmentShape shape, double x, double factor) {
    Vector moved = shape.rest(x).plus(shape.movement(x).times(factor));
    return placing.spot(moved);
  }

  void draw(double factor) {
    for (SegmentShape shape : shapes) {
      List<Spot> line = new ArrayList<>();
      for (double x : shape.places()) {
        line.add(spot(shape, x, factor));
      }
      page.paper.line(Trace.through(line, false), MOVED);
      page.labels.avoid(line);
    }
  }

  static void legend(Page page) {
    page.legend.line(MOVED, "moved, enlarged");
    page.legend.line(Pen.full(new Ink(0x9AA6AB), 1), "at rest");
  }
}
