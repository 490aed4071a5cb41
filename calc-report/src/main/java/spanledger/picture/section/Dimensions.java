package spanledger.picture.section;

import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;
import spanledger.picture.page.Labels;

/** Dimension lines as on a workshop drawing. */
final class Dimensions {

  static final double SIZE = 12;
  private static final Pen LINE = Pen.full(Ink.QUIET, 0.7);
  private static final Pen TICK = Pen.full(Ink.BLACK, 1.3);
  private static final double TICK_REACH = 4;
  private static final double OVERRUN = 5;

  private final Drawing.Paper paper;
  private final Labels labels;
  private final Lettering lettering;

  Dimensions(Drawing.Paper paper, Labels labels, Lettering lettering) {
    this.paper = paper;
    this.labels = labels;
    this.lettering = lettering;
  }

  /** A level dimension below the section. */
  void below(Box box, double at, String words) {
    extension(new Spot(box.left(), box.bottom() + 4), new Spot(box.left(), at + OVERRUN));
    extension(new Spot(box.right(), box.bottom() + 4), new Spot(box.right(), at + OVERRUN));
    Spot from = new Spot(box.left(), at);
    Spot to = new Spot(box.right(), at);
    line(from, to);
    labels.fixed(from.towards(to, 0.5).plus(0, -4), words, SIZE, Mark.Anchor.MIDDLE, Ink.BLACK);
  }

  /** An upright dimension to the left of the section. */
  void beside(Box box, double at, String words) {
    extension(new Spot(box.left() - 4, box.top()), new Spot(at - OVERRUN, box.top()));
    extension(new Spot(box.left() - 4, box.bottom()), new Spot(at - OVERRUN, box.bottom()));
    Spot from = new Spot(at, box.bottom());
    Spot to = new Spot(at, box.top());
    line(from, to);
    Spot middle = from.towards(to, 0.5).plus(-4, 0);
    paper.mark(new Mark.Words(middle, words, SIZE, Mark.Anchor.MIDDLE, -90, Ink.BLACK, true));
    labels.keepFree(
        Box.around(middle.plus(-SIZE / 2, 0), SIZE, lettering.width(words, SIZE)).grown(1));
  }

  /**
   * The thickness of a wall between two faces.
   *
   * @param from on one face
   * @param to on the other
   */
  void across(Spot from, Spot to, String words) {
    double length = from.distance(to);
    double ux = (to.x() - from.x()) / length;
    double uy = (to.y() - from.y()) / length;
    double reach = 9;
    Spot outer = from.plus(-ux * reach, -uy * reach);
    Spot end = to.plus(ux * reach, uy * reach);
    paper.line(Trace.through(outer, end), Pen.full(Ink.BLACK, 0.8));
    tick(from);
    tick(to);
    labels.avoid(outer, end);
    labels.near(end, words, SIZE, Ink.BLACK, false);
  }

  private void extension(Spot from, Spot to) {
    paper.line(Trace.through(from, to), LINE);
  }

  private void line(Spot from, Spot to) {
    paper.line(Trace.through(from, to), LINE);
    tick(from);
    tick(to);
    labels.avoid(from, to);
  }

  private void tick(Spot at) {
    paper.line(
        Trace.through(at.plus(-TICK_REACH, TICK_REACH), at.plus(TICK_REACH, -TICK_REACH)), TICK);
  }
}
