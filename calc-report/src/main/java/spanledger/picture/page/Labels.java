package spanledger.picture.page;

import java.util.ArrayList;
import java.util.List;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/** Puts labels where nothing else is; what stands first keeps its place. */
public final class Labels {

  private static final double GAP = 2.5;
  private static final int DIRECTIONS = 16;
  private static final double[] REACHES = {14, 20, 28, 38, 50, 64};

  /** A label over lines is bad, one over another label is worse. */
  private static final double OVER_LABEL = 100;

  /** A label that would cover more of what is drawn than this is left out. */
  private static final double MOST_LINES_CROSSED = 16;

  private static final Box EVERYWHERE =
      new Box(
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY);

  private final Drawing.Paper paper;
  private final Lettering lettering;
  private final Box within;
  private final List<Box> taken = new ArrayList<>();
  private final List<Spot> busy = new ArrayList<>();

  public Labels(Drawing.Paper paper, Lettering lettering) {
    this(paper, lettering, EVERYWHERE);
  }

  /** Labels that stay within a part of the paper, unless they have a fixed place. */
  public Labels(Drawing.Paper paper, Lettering lettering, Box within) {
    this.paper = paper;
    this.lettering = lettering;
    this.within = within;
  }

  /** Keeps labels out of a box. */
  public void keepFree(Box box) {
    taken.add(box);
  }

  /** Keeps labels off a line as far as possible. */
  public void avoid(Spot from, Spot to) {
    int steps = (int) Math.ceil(from.distance(to) / 3) + 1;
    for (int i = 0; i <= steps; i++) {
      busy.add(from.towards(to, (double) i / steps));
    }
  }

  /** Keeps labels off a line as far as possible. */
  public void avoid(List<Spot> line) {
    for (int i = 0; i + 1 < line.size(); i++) {
      avoid(line.get(i), line.get(i + 1));
    }
  }

  /** Writes words at a fixed place. */
  public void fixed(Spot at, String words, double size, Mark.Anchor anchor, Ink ink) {
    paper.mark(new Mark.Words(at, words, size, anchor, 0, ink, true));
    taken.add(Box.ofWords(at, lettering.width(words, size), size, anchor));
  }

  /**
   * Writes words near a place, with a thin line to it where they stand off.
   *
   * @param framed whether a box is drawn around them
   */
  public void near(Spot place, String words, double size, Ink ink, boolean framed) {
    double width = lettering.width(words, size) + (framed ? 6 : 0);
    double height = size + (framed ? 4 : 0);
    Box best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double reach : REACHES) {
      for (int i = 0; i < DIRECTIONS; i++) {
        // Starts right above, where one looks first.
        double angle = 2 * Math.PI * i / DIRECTIONS - Math.PI / 4;
        Spot centre =
            place.plus((reach + width / 2 - size / 2) * Math.cos(angle), reach * Math.sin(angle));
        Box box = Box.around(centre, width, height);
        double cost = cost(box.grown(GAP)) + reach / 40;
        if (cost < least) {
          least = cost;
          best = box;
        }
      }
    }
    if (best == null) {
      return;
    }
    Spot centre = best.centre();
    Spot hook = nearestOn(best, place);
    if (hook.distance(place) > 9) {
      paper.line(Trace.through(place, hook), Pen.full(Ink.QUIET, 0.6));
      avoid(place, hook);
    }
    if (framed) {
      paper.area(
          Trace.around(
              new Spot(best.left(), best.top()),
              new Spot(best.right(), best.top()),
              new Spot(best.right(), best.bottom()),
              new Spot(best.left(), best.bottom())),
          Ink.WHITE,
          Pen.full(ink, 0.8));
    }
    paper.mark(
        new Mark.Words(
            centre.plus(0, size * 0.35), words, size, Mark.Anchor.MIDDLE, 0, ink, !framed));
    taken.add(best);
  }

  /**
   * Writes words near a place if there is room that no other label takes, with a thin line to the
   * place where they stand off; else leaves them out.
   *
   * @return whether they were written
   */
  public boolean offer(Spot place, String words, double size, Ink ink) {
    double width = lettering.width(words, size);
    Box best = null;
    double least = MOST_LINES_CROSSED;
    for (double reach : REACHES) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS - Math.PI / 4;
        Spot centre = place.plus((reach + width / 2) * Math.cos(angle), reach * Math.sin(angle));
        Box box = Box.around(centre, width, size);
        double cost = isFree(box.grown(GAP)) ? cost(box.grown(1)) + reach / 20 : least;
        if (cost < least) {
          least = cost;
          best = box;
        }
      }
    }
    if (best == null) {
      return false;
    }
    Spot hook = nearestOn(best.grown(1), place);
    if (hook.distance(place) > 5) {
      paper.line(Trace.through(place, hook), Pen.full(Ink.QUIET, 0.6));
      avoid(place, hook);
    }
    paper.mark(
        new Mark.Words(
            best.centre().plus(0, size * 0.35), words, size, Mark.Anchor.MIDDLE, 0, ink, true));
    taken.add(best);
    return true;
  }

  /** Whether no label would lie under words in a box, and the box is on the paper. */
  public boolean isFree(Box box) {
    return isWithin(box) && taken.stream().noneMatch(box::meets);
  }

  private boolean isWithin(Box box) {
    return box.left() >= within.left()
        && box.right() <= within.right()
        && box.top() >= within.top()
        && box.bottom() <= within.bottom();
  }

  private double cost(Box box) {
    double cost = isWithin(box) ? 0 : OVER_LABEL;
    for (Box other : taken) {
      cost += box.meets(other) ? OVER_LABEL : 0;
    }
    for (Spot spot : busy) {
      cost += box.holds(spot) ? 1 : 0;
    }
    return cost;
  }

  private static Spot nearestOn(Box box, Spot place) {
    return new Spot(
        Math.max(box.left(), Math.min(box.right(), place.x())),
        Math.max(box.top(), Math.min(box.bottom(), place.y())));
  }
}
