package spanledger.picture.structure;

import spanledger.frame.Freedom;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/** Signs for supports and joints. */
final class Symbols {

  private static final Pen LINE = Pen.full(Ink.BLACK, 0.9);
  private static final Pen ARM = Pen.dashed(Ink.BLACK, 2, 2.0, 1.5);
  private static final double HALF = 5;
  private static final double JOINT = 2.1;

  /** How far from its node the sign of a joint stands. */
  private static final double OFF_NODE = 8;

  private Symbols() {}

  /** What a foot does. */
  enum Foot {
    CLAMPED("foot that holds shifts and turns"),
    PINNED("foot that holds shifts, not all turns"),
    LIFTS("foot that may lift"),
    GUIDED("support that leaves some shift free");

    private final String words;

    Foot(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }

    static Foot of(Support support) {
      boolean shifts = true;
      boolean turns = true;
      boolean oneWay = false;
      for (Freedom freedom : Freedom.values()) {
        Restraint restraint = support.restraint(freedom);
        oneWay |= restraint instanceof Restraint.OneWay;
        boolean held = !(restraint instanceof Restraint.Free);
        shifts &= held || !freedom.isShift();
        turns &= held || freedom.isShift();
      }
      return oneWay ? LIFTS : !shifts ? GUIDED : turns ? CLAMPED : PINNED;
    }
  }

  /** A foot below a place. */
  static void foot(Drawing.Paper paper, Spot at, Foot foot) {
    if (foot == Foot.CLAMPED) {
      paper.area(
          Trace.around(at.plus(-HALF, 0), at.plus(HALF, 0), at.plus(HALF, 4), at.plus(-HALF, 4)),
          Ink.BLACK);
      return;
    }
    double low = 8;
    paper.area(
        Trace.around(at, at.plus(HALF, low), at.plus(-HALF, low)),
        foot == Foot.GUIDED ? Ink.WHITE : Ink.PALE,
        LINE);
    if (foot != Foot.PINNED) {
      double second = low + 3;
      paper.line(Trace.through(at.plus(-HALF - 2, second), at.plus(HALF + 2, second)), LINE);
    }
    if (foot == Foot.LIFTS) {
      paper.line(Trace.through(at.plus(-HALF - 2, low + 5.5), at.plus(HALF + 2, low + 5.5)), LINE);
    }
  }

  /** Whether a joint lets its member turn, at least against a spring. */
  static boolean turns(MemberEnd end) {
    return !(end.aboutY() instanceof Restraint.Fixed) || !(end.aboutZ() instanceof Restraint.Fixed);
  }

  /** Whether a joint lets its member turn freely about at least one axis. */
  static boolean isPinned(MemberEnd end) {
    return end.aboutY() instanceof Restraint.Free || end.aboutZ() instanceof Restraint.Free;
  }

  /**
   * A joint that is not rigid: open if free about some axis, filled if a spring or play holds it.
   */
  static void joint(Drawing.Paper paper, Spot at, boolean pinned) {
    paper.area(Trace.circle(at, JOINT), pinned ? Ink.WHITE : Ink.BLACK, LINE);
  }

  /** The joints of a segment that are not rigid, beside its nodes. */
  static void joints(Drawing.Paper paper, Segment segment, Placing placing) {
    Spot from = placing.spot(segment.from());
    Spot to = placing.spot(segment.to());
    double length = from.distance(to);
    if (length < 4 * OFF_NODE) {
      return;
    }
    if (turns(segment.start())) {
      joint(paper, from.towards(to, OFF_NODE / length), isPinned(segment.start()));
    }
    if (turns(segment.end())) {
      joint(paper, to.towards(from, OFF_NODE / length), isPinned(segment.end()));
    }
  }

  /** The rigid arms between the ends of a segment and its nodes; whether there are any. */
  static boolean arms(Drawing.Paper paper, Segment segment, Placing placing) {
    boolean any = false;
    if (segment.start().offset().norm() > 0) {
      arm(paper, placing.spot(segment.first().place()), placing.spot(segment.from()));
      any = true;
    }
    if (segment.end().offset().norm() > 0) {
      arm(paper, placing.spot(segment.second().place()), placing.spot(segment.to()));
      any = true;
    }
    return any;
  }

  /** A rigid arm. */
  static void arm(Drawing.Paper paper, Spot node, Spot end) {
    paper.line(Trace.through(node, end), ARM);
  }

  /** The three axes as they are looked at. */
  static void axes(Drawing.Paper paper, Projection projection, Spot origin) {
    String[] names = {"X", "Y", "Z"};
    double[][] units = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    for (int i = 0; i < names.length; i++) {
      Vector unit = new Vector(units[i][0], units[i][1], units[i][2]);
      double x = projection.right().dot(unit) * 28;
      double y = -projection.up().dot(unit) * 28;
      double length = Math.hypot(x, y);
      if (length < 3) {
        continue;
      }
      Spot tip = origin.plus(x, y);
      double ux = x / length;
      double uy = y / length;
      paper.line(Trace.through(origin, tip), Pen.full(Ink.BLACK, 1));
      paper.area(
          Trace.around(
              tip.plus(ux * 5, uy * 5),
              tip.plus(-uy * 2.2, ux * 2.2),
              tip.plus(uy * 2.2, -ux * 2.2)),
          Ink.BLACK);
      paper.words(
          tip.plus(ux * 13, uy * 13 + 4), names[i], Page.SIZE, Mark.Anchor.MIDDLE, Ink.BLACK);
    }
  }
}
