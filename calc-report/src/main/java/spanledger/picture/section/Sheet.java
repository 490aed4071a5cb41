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
import spanledger.picture.page.Legend;

/** The paper of a picture of a section: title, room for the section, room for words beside it. */
final class Sheet {

  static final double WIDTH = 940;
  private static final double MARGIN = 24;
  private static final double LEGEND_LEFT = 650;
  private static final double LEAST_HEIGHT = 420;

  final Drawing.Paper paper = new Drawing.Paper();
  final Lettering lettering;
  final Labels labels;
  final Legend legend;

  Sheet(Lettering lettering, String title, String purpose) {
    this.lettering = lettering;
    labels = new Labels(paper, lettering);
    paper.words(new Spot(MARGIN, 32), title, 18, Mark.Anchor.START, Ink.BLACK);
    paper.words(new Spot(MARGIN, 51), purpose, 12, Mark.Anchor.START, Ink.QUIET);
    paper.line(
        Trace.through(new Spot(MARGIN, 60), new Spot(WIDTH - MARGIN, 60)), Pen.full(Ink.BLACK, 1));
    legend = new Legend(paper, lettering, new Spot(LEGEND_LEFT, 84), WIDTH - MARGIN - LEGEND_LEFT);
  }

  /**
   * The room for the section itself.
   *
   * @param side kept free left of it
   */
  static Box room(double side) {
    return new Box(MARGIN + side, 116, LEGEND_LEFT - 60, 600);
  }

  /** A scale bar of a round length below the section. */
  void scaleBar(View view, double at) {
    double longest = 120 / view.scale();
    double unit = Math.pow(10, Math.floor(Math.log10(longest)));
    double length = longest >= 5 * unit ? 5 * unit : longest >= 2 * unit ? 2 * unit : unit;
    Spot from = new Spot(MARGIN + 6, at);
    Spot to = from.plus(length * view.scale(), 0);
    Pen pen = Pen.full(Ink.BLACK, 1.2);
    paper.line(
        Trace.through(from.plus(0, -4), from.plus(0, 4))
            .and(Trace.through(from, to))
            .and(Trace.through(to.plus(0, -4), to.plus(0, 4))),
        pen);
    paper.words(to.plus(8, 4), Shown.length(length) + " mm", 12, Mark.Anchor.START, Ink.BLACK);
  }

  /** The axes of the outline's coordinates, small. */
  void axes(double at) {
    Spot origin = new Spot(LEGEND_LEFT - 110, at + 4);
    Pen pen = Pen.full(Ink.BLACK, 1);
    paper.line(
        Trace.through(origin.plus(0, -24), origin, origin.plus(24, 0))
            .and(Trace.through(origin.plus(-3, -19), origin.plus(0, -24), origin.plus(3, -19)))
            .and(Trace.through(origin.plus(19, -3), origin.plus(24, 0), origin.plus(19, 3))),
        pen);
    paper.words(origin.plus(28, 4), "y", 12, Mark.Anchor.START, Ink.BLACK);
    paper.words(origin.plus(-3, -28), "z", 12, Mark.Anchor.START, Ink.BLACK);
  }

  /**
   * The finished drawing.
   *
   * @param bottom of what stands below the section
   */
  Drawing finish(double bottom, String title, String description) {
    double height = Math.max(LEAST_HEIGHT, Math.max(bottom, legend.bottom()) + 20);
    return paper.finish(WIDTH, Math.ceil(height), title, description);
  }
}
