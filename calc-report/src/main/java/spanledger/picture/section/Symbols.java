package spanledger.picture.section;

import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/** The signs for points of a section. */
final class Symbols {

  private static final double RADIUS = 6;

  private Symbols() {}

  /** Centroid: a circle with two dark quarters. */
  static void centroid(Drawing.Paper paper, Spot at) {
    paper.area(Trace.circle(at, RADIUS), Ink.WHITE, Pen.full(Ink.BLACK, 1.2));
    for (int sign : new int[] {1, -1}) {
      paper.area(
          new Trace(
              java.util.List.of(
                  new Trace.Start(at),
                  new Trace.Line(at.plus(sign * RADIUS, 0)),
                  new Trace.Arc(at.plus(0, sign * RADIUS), Math.tan(Math.PI / 8)),
                  new Trace.Close())),
          Ink.BLACK);
    }
  }

  /** Shear centre: a cross in a circle. */
  static void shearCentre(Drawing.Paper paper, Spot at) {
    double reach = RADIUS * Math.sqrt(0.5);
    paper.area(Trace.circle(at, RADIUS), Ink.WHITE, Pen.full(Ink.BLACK, 1.2));
    paper.line(
        Trace.through(at.plus(-reach, -reach), at.plus(reach, reach))
            .and(Trace.through(at.plus(-reach, reach), at.plus(reach, -reach))),
        Pen.full(Ink.BLACK, 1.2));
  }

  /** A place of a largest value: an open triangle. */
  static void peak(Drawing.Paper paper, Spot at) {
    paper.area(
        Trace.around(at.plus(0, -7), at.plus(6, 4), at.plus(-6, 4)),
        Ink.WHITE,
        Pen.full(Ink.BLACK, 1.4));
  }

  /** Something that someone has to look at: a filled square standing on a corner. */
  static void doubt(Drawing.Paper paper, Spot at) {
    paper.area(
        Trace.around(at.plus(0, -7), at.plus(7, 0), at.plus(0, 7), at.plus(-7, 0)),
        Ink.BLACK,
        Pen.full(Ink.WHITE, 1.2));
  }
}
