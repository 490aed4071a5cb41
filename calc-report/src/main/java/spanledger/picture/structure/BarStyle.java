package spanledger.picture.structure;

import java.util.Optional;
import spanledger.frame.MemberRole;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/**
 * How a member looks.
 *
 * @param body its colour
 * @param edge the colour of its edges
 * @param width its width on the paper, edges included
 * @param core a line along its middle, if there is one
 */
record BarStyle(Ink body, Ink edge, double width, Optional<Pen> core) {

  private static final double EDGE = 0.7;
  private static final Ink FAINT = new Ink(0xF7F9F9);
  private static final Ink FAINT_EDGE = new Ink(0xAAB4B7);

  /** By what a member is for. */
  static BarStyle of(MemberRole role) {
    return switch (role) {
      case LEG -> plain(new Ink(0x9FB0B5), 5.6);
      case FLOOR -> plain(new Ink(0xD3DEDF), 4.4);
      case RAIL_POST -> plain(new Ink(0xC9D3D5), 4);
      case RAIL -> plain(Ink.WHITE, 3);
      case BRACE -> plain(new Ink(0x5F6F76), 2.4);
      case OTHER -> plain(Ink.WHITE, 3.6);
    };
  }

  static BarStyle plain(Ink body, double width) {
    return new BarStyle(body, Ink.BLACK, width, Optional.empty());
  }

  /** The same as it looks behind a floor. */
  BarStyle behind() {
    return new BarStyle(
        FAINT, FAINT_EDGE, width * 0.8, core.map(pen -> new Pen(edge, pen.width(), pen.dashes())));
  }

  /** Draws a piece. */
  void draw(Drawing.Paper paper, Spot from, Spot to) {
    double length = from.distance(to);
    if (length < width / 2) {
      double half = width / 2;
      paper.area(
          Trace.around(
              from.plus(-half, -half),
              from.plus(half, -half),
              from.plus(half, half),
              from.plus(-half, half)),
          body,
          Pen.full(edge, EDGE));
      return;
    }
    double across = (width - EDGE) / 2;
    double dx = -(to.y() - from.y()) / length * across;
    double dy = (to.x() - from.x()) / length * across;
    paper.area(
        Trace.around(from.plus(dx, dy), to.plus(dx, dy), to.plus(-dx, -dy), from.plus(-dx, -dy)),
        body,
        Pen.full(edge, EDGE));
    core.ifPresent(pen -> paper.line(Trace.through(from, to), pen));
  }

  /** A short piece for a legend. */
  void sample(Drawing.Paper paper, Spot middle) {
    draw(paper, middle.plus(-15, 0), middle.plus(15, 0));
  }
}
