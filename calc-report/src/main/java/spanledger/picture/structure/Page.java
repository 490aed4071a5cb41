package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
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

/**
 * The paper of a picture: title, room for the structure, a legend beside it, a caption below. It
 * fits an A4 sheet lying down with margins of 10 mm, so that printed scales are true.
 */
final class Page {

  static final double WIDTH = 277 * Placing.PER_PAPER_MM;
  static final double HEIGHT = 190 * Placing.PER_PAPER_MM;
  static final double SIZE = 11;
  private static final double MARGIN = 10;
  private static final double LEGEND_WIDTH = 220;
  private static final double TOP = 62;
  private static final double CAPTION_LINE = 15;
  private static final int CAPTION_LINES = 3;

  final Drawing.Paper paper = new Drawing.Paper();
  final Lettering lettering;
  final Labels labels;
  final Legend legend;
  private final String title;
  private final boolean withLegend;

  /**
   * An empty page.
   *
   * @param title what the picture shows
   * @param withLegend whether room beside the structure is kept for a legend
   */
  Page(Subject subject, String title, boolean withLegend) {
    this.lettering = subject.lettering();
    this.title = title;
    this.withLegend = withLegend;
    labels = new Labels(paper, lettering, room());
    paper.words(new Spot(MARGIN, 24), title, 18, Mark.Anchor.START, Ink.BLACK);
    paper.words(new Spot(MARGIN, 42), subject.title(), 12, Mark.Anchor.START, Ink.QUIET);
    paper.line(
        Trace.through(new Spot(MARGIN, 50), new Spot(WIDTH - MARGIN, 50)), Pen.full(Ink.BLACK, 1));
    legend =
        new Legend(
            paper, lettering, new Spot(WIDTH - MARGIN - LEGEND_WIDTH, TOP + 16), LEGEND_WIDTH);
  }

  /** The paper that is free for the structure with its labels. */
  Box room() {
    return new Box(
        MARGIN,
        TOP,
        withLegend ? WIDTH - MARGIN - LEGEND_WIDTH - 20 : WIDTH - MARGIN,
        HEIGHT - CAPTION_LINES * CAPTION_LINE - 14);
  }

  /** The room with a rim on all sides for labels. */
  Box room(double rim) {
    return room().grown(-rim);
  }

  /**
   * The finished drawing.
   *
   * @param caption what the picture shows, and where its numbers come from
   */
  Drawing finish(String caption) {
    List<String> lines = lines(caption);
    paper.line(
        Trace.through(
            new Spot(MARGIN, HEIGHT - CAPTION_LINES * CAPTION_LINE - 8),
            new Spot(WIDTH - MARGIN, HEIGHT - CAPTION_LINES * CAPTION_LINE - 8)),
        Pen.full(Ink.QUIET, 0.6));
    double y = HEIGHT - CAPTION_LINES * CAPTION_LINE + 6;
    for (String line : lines) {
      paper.words(new Spot(MARGIN, y), line, SIZE, Mark.Anchor.START, Ink.BLACK);
      y += CAPTION_LINE;
    }
    return paper.finish(Math.ceil(WIDTH), Math.ceil(HEIGHT), title, caption);
  }

  private List<String> lines(String caption) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : caption.split(" ", -1)) {
      if (line.length() > 0 && lettering.width(line + " " + word, SIZE) > WIDTH - 2 * MARGIN) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
