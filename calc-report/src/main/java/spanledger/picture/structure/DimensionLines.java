package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import spanledger.picture.Ink;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;

/** Chains of dimensions in mm, below and beside what they measure. */
final class DimensionLines {

  private static final double SIZE = 10.5;
  private static final Pen LINE = Pen.full(Ink.QUIET, 0.6);
  private static final Pen TICK = Pen.full(Ink.BLACK, 1.2);
  private static final double REACH = 3.5;
  private static final double OVERRUN = 5;
  private static final double GAP = 4;

  /** From this many equal sizes in a row on, they are written once with their number. */
  private static final int MANY = 3;

  private final Page page;
  private final Placing placing;
  private int leftOut;

  DimensionLines(Page page, Placing placing) {
    this.page = page;
    this.placing = placing;
  }

  /**
   * Some equal sizes beside each other.
   *
   * @param from where the first begins, mm
   * @param size of each, mm
   * @param count how many
   */
  record Run(double from, double size, int count) {

    double to() {
      return from + size * count;
    }

    String words() {
      return count == 1
          ? Sizes.mm(size)
          : count + " × " + Sizes.mm(size) + " = " + Sizes.mm(size * count);
    }
  }

  /** How many sizes found no room. */
  int leftOut() {
    return leftOut;
  }

  /** Runs of equal sizes between places that are in order. */
  static List<Run> runs(List<Double> places, int many) {
    List<Run> runs = new ArrayList<>();
    int i = 0;
    while (i + 1 < places.size()) {
      double size = places.get(i + 1) - places.get(i);
      int count = 1;
      while (i + count + 1 < places.size()
          && Math.abs(places.get(i + count + 1) - places.get(i + count) - size) < 0.05) {
        count++;
      }
      if (count < many) {
        runs.add(new Run(places.get(i), size, 1));
        i++;
      } else {
        runs.add(new Run(places.get(i), size, count));
        i += count;
      }
    }
    return runs;
  }

  /** Whether all sizes between places are equal, so that a chain of them says their sum, too. */
  static boolean saySum(List<Double> places) {
    return runs(Sizes.distinct(places), MANY).size() == 1;
  }

  private double x(double right) {
    return placing.left() + placing.scale() * right;
  }

  private double y(double up) {
    return placing.base() - placing.scale() * up;
  }

  /**
   * A level chain.
   *
   * @param places distances to the right, mm
   * @param at where on the paper the chain lies
   * @param from where on the paper what it measures ends
   */
  void level(List<Double> places, double at, double from) {
    List<Double> distinct = Sizes.distinct(places);
    if (distinct.size() < 2) {
      return;
    }
    double overrun = at > from ? OVERRUN : -OVERRUN;
    List<Run> runs = runs(distinct, many(distinct));
    for (double place : distinct) {
      double x = x(place);
      if (!isInner(place, runs)) {
        page.paper.line(
            Trace.through(new Spot(x, from + overrun), new Spot(x, at + overrun)), LINE);
      }
      tick(new Spot(x, at));
    }
    line(new Spot(x(distinct.get(0)), at), new Spot(x(distinct.get(distinct.size() - 1)), at));
    for (Run run : runs) {
      double middle = x((run.from() + run.to()) / 2);
      double room = placing.scale() * (run.to() - run.from());
      double width = page.lettering.width(run.words(), SIZE);
      if (width + GAP <= room) {
        words(new Spot(middle, at - lift(run)), run.words(), 0, width);
      } else {
        // Too narrow: the size stands upright below the line.
        Spot below = new Spot(middle + SIZE * 0.36, at + 5);
        turned(below, run.words(), width);
      }
    }
  }

  /**
   * An upright chain.
   *
   * @param places heights, mm
   * @param at where on the paper the chain lies
   * @param from where on the paper what it measures ends
   */
  void upright(List<Double> places, double at, double from) {
    List<Double> distinct = Sizes.distinct(places);
    if (distinct.size() < 2) {
      return;
    }
    double overrun = at > from ? OVERRUN : -OVERRUN;
    List<Run> runs = runs(distinct, many(distinct));
    for (double place : distinct) {
      double y = y(place);
      if (!isInner(place, runs)) {
        page.paper.line(
            Trace.through(new Spot(from + overrun, y), new Spot(at + overrun, y)), LINE);
      }
      tick(new Spot(at, y));
    }
    line(new Spot(at, y(distinct.get(0))), new Spot(at, y(distinct.get(distinct.size() - 1))));
    for (Run run : runs) {
      double middle = y((run.from() + run.to()) / 2);
      double room = placing.scale() * (run.to() - run.from());
      double width = page.lettering.width(run.words(), SIZE);
      if (width + GAP <= room) {
        words(new Spot(at - lift(run), middle), run.words(), -90, width);
      } else {
        beside(new Spot(at - 5, middle + SIZE * 0.36), run.words(), width);
      }
    }
  }

  /** A mark of a level, with its height. */
  void levelMark(double height, double at, String what) {
    Spot tip = new Spot(at, y(height));
    String words = Sizes.level(height) + (what.isEmpty() ? "" : " " + what);
    double width = page.lettering.width(words, SIZE);
    Box box = Box.ofWords(tip.plus(14, 4), width, SIZE, Mark.Anchor.START);
    if (!page.labels.isFree(box)) {
      leftOut++;
      return;
    }
    page.paper.area(
        Trace.around(tip, tip.plus(-4, -6), tip.plus(4, -6)), Ink.WHITE, Pen.full(Ink.BLACK, 0.9));
    page.paper.line(Trace.through(tip.plus(-8, 0), tip.plus(12, 0)), LINE);
    page.labels.fixed(tip.plus(14, 4), words, SIZE, Mark.Anchor.START, Ink.BLACK);
  }

  /** Whether a place is between several equal sizes; their ticks are enough. */
  private static boolean isInner(double place, List<Run> runs) {
    return runs.stream()
        .anyMatch(run -> place > run.from() + Sizes.SAME && place < run.to() - Sizes.SAME);
  }

  /** How far over the line words stand: clear of the ticks between several equal sizes. */
  private static double lift(Run run) {
    return run.count() > 1 ? REACH + 3 : 3;
  }

  /** Equal sizes are written one by one only if there are few of them with room for each. */
  private int many(List<Double> places) {
    for (int i = 0; i + 1 < places.size(); i++) {
      double size = places.get(i + 1) - places.get(i);
      if (page.lettering.width(Sizes.mm(size), SIZE) + GAP > size * placing.scale()) {
        return 2;
      }
    }
    return MANY;
  }

  private void words(Spot at, String words, double turn, double width) {
    Box box =
        turn == 0
            ? Box.ofWords(at, width, SIZE, Mark.Anchor.MIDDLE)
            : Box.around(at.plus(-SIZE * 0.36, 0), SIZE, width);
    write(at, words, turn, Mark.Anchor.MIDDLE, box);
  }

  private void turned(Spot at, String words, double width) {
    Box box = Box.around(at.plus(-SIZE * 0.36, width / 2), SIZE * 0.9, width);
    write(at, words, -90, Mark.Anchor.END, box);
  }

  private void beside(Spot at, String words, double width) {
    write(at, words, 0, Mark.Anchor.END, Box.ofWords(at, width, SIZE * 0.9, Mark.Anchor.END));
  }

  private void write(Spot at, String words, double turn, Mark.Anchor anchor, Box box) {
    if (!page.labels.isFree(box)) {
      leftOut++;
      return;
    }
    page.paper.mark(new Mark.Words(at, words, SIZE, anchor, turn, Ink.BLACK, true));
    page.labels.keepFree(box);
  }

  private void line(Spot from, Spot to) {
    page.paper.line(Trace.through(from, to), LINE);
    page.labels.avoid(from, to);
  }

  private void tick(Spot at) {
    page.paper.line(Trace.through(at.plus(-REACH, REACH), at.plus(REACH, -REACH)), TICK);
  }
}
