package spanledger.picture.structure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import spanledger.action.LoadAxes;
import spanledger.action.SegmentLoad;
import spanledger.envelope.Instance;
import spanledger.envelope.Standing;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.state.HoldReport;

/** What pictures of states have in common: the frame at rest, the standing load, open holds. */
final class Overlay {

  private static final Pen REST = Pen.full(new Ink(0x9AA6AB), 1);
  private static final Pen MARK = Pen.full(Ink.BLACK, 1.4);
  private static final double ARROW = 26;

  private final Subject subject;
  private final Page page;
  private final Placing placing;

  Overlay(Subject subject, Page page, Placing placing) {
    this.subject = subject;
    this.page = page;
    this.placing = placing;
  }

  /** The axes of members as thin lines, with the feet. */
  void rest() {
    for (Segment segment : subject.frame().segments()) {
      page.paper.line(
          Trace.through(placing.spot(segment.from()), placing.spot(segment.to())), REST);
      Symbols.arms(page.paper, segment, placing);
    }
    for (Support support : subject.frame().supports()) {
      Spot at = placing.spot(support.node().place());
      Symbols.foot(page.paper, at, Symbols.Foot.of(support));
    }
  }

  /** An arrow where the moving load of a combination stands. */
  void standing(Instance instance) {
    for (SegmentLoad load : instance.standing().map(Standing::placed).orElse(List.of())) {
      double x;
      double force;
      if (load instanceof SegmentLoad.Point point) {
        x = point.at();
        force = point.force();
      } else {
        SegmentLoad.Distributed spread = (SegmentLoad.Distributed) load;
        x = (spread.from() + spread.to()) / 2;
        force = (spread.intensityFrom() + spread.intensityTo()) / 2 * (spread.to() - spread.from());
      }
      if (load.axes() == LoadAxes.GLOBAL) {
        arrow(load, x, Math.signum(force));
      }
    }
  }

  private void arrow(SegmentLoad load, double x, double sign) {
    Segment segment = load.segment();
    Vector place =
        segment.from().plus(segment.to().minus(segment.from()).times(x / segment.length()));
    Spot tip = placing.spot(place);
    Projection projection = placing.projection();
    double dx = projection.right().dot(load.direction()) * sign;
    double dy = -projection.up().dot(load.direction()) * sign;
    double length = Math.hypot(dx, dy);
    if (length < 0.1) {
      return;
    }
    double ux = dx / length;
    double uy = dy / length;
    Spot tail = tip.plus(-ux * ARROW, -uy * ARROW);
    Spot neck = tip.plus(-ux * 7, -uy * 7);
    page.paper.line(Trace.through(tail, neck), MARK);
    page.paper.area(
        Trace.around(tip, neck.plus(-uy * 3.2, ux * 3.2), neck.plus(uy * 3.2, -ux * 3.2)),
        Ink.BLACK);
    page.labels.avoid(tail, tip);
  }

  /** Rings round holds that do nothing, with words. */
  void open(List<HoldReport> holds) {
    for (HoldReport hold : holds) {
      Vector place;
      if (hold.where() instanceof HoldReport.Where.OfSupport support) {
        place = support.node().place();
      } else if (hold.where() instanceof HoldReport.Where.OfAxis axis) {
        place = axis.segment().from().plus(axis.segment().to()).times(0.5);
      } else {
        continue;
      }
      Spot at = placing.spot(place);
      page.paper.line(Trace.circle(at, 8), MARK);
      page.labels.offer(at, hold.words(), Page.SIZE, Ink.BLACK);
    }
  }

  /** A round factor of at most a given size: 1, 2 or 5 times a power of ten. */
  static double round(double most) {
    double unit = Math.pow(10, Math.floor(Math.log10(most)));
    return most >= 5 * unit ? 5 * unit : most >= 2 * unit ? 2 * unit : unit;
  }

  /** A number with three digits that count. */
  static String three(double value) {
    double size = Math.abs(value);
    int decimals = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
    return String.format(Locale.ROOT, "%." + decimals + "f", value).replace("-", "−");
  }

  /** A factor without idle digits. */
  static String factor(double value) {
    return new BigDecimal(String.format(Locale.ROOT, "%.6g", value))
        .stripTrailingZeros()
        .toPlainString();
  }
}
