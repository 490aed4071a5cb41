package spanledger.picture.structure;

import spanledger.action.Surface;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/** Signs of plans. */
final class PlanMarks {

  private static final Pen DECK = Pen.full(new Ink(0x46808F), 1);

  private PlanMarks() {}

  /** A double arrow square to the members that carry the deck. */
  static void deckArrow(Page page, Placing placing, Surface floor) {
    Member carrier = floor.carriedBy().get(0);
    Vector along =
        carrier
            .nodes()
            .get(carrier.nodes().size() - 1)
            .place()
            .minus(carrier.nodes().get(0).place())
            .unit();
    Vector span = new Vector(along.y(), -along.x(), 0);
    // Beside the middle, where a bearer is likely to lie.
    Spot middle = placing.spot(middle(floor)).plus(along.x() * 16, -along.y() * 16);
    double half = 24;
    Spot from = middle.plus(-span.x() * half, span.y() * half);
    Spot to = middle.plus(span.x() * half, -span.y() * half);
    page.paper.line(Trace.through(from, to), DECK);
    head(page, from, to);
    head(page, to, from);
    page.labels.avoid(from, to);
  }

  private static void head(Page page, Spot from, Spot tip) {
    double length = from.distance(tip);
    double ux = (tip.x() - from.x()) / length;
    double uy = (tip.y() - from.y()) / length;
    Spot neck = tip.plus(-ux * 7, -uy * 7);
    page.paper.area(
        Trace.around(tip, neck.plus(-uy * 3, ux * 3), neck.plus(uy * 3, -ux * 3)), DECK.ink());
  }

  /** An arrow up a flight. */
  static void stairArrow(Page page, Placing placing, Surface flight) {
    Vector low = Vector.ZERO;
    Vector high = Vector.ZERO;
    double middle = middle(flight).z();
    int below = 0;
    int above = 0;
    for (Node corner : flight.corners()) {
      if (corner.place().z() < middle) {
        low = low.plus(corner.place());
        below++;
      } else {
        high = high.plus(corner.place());
        above++;
      }
    }
    Spot from = placing.spot(low.times(1.0 / Math.max(below, 1)));
    Spot to = placing.spot(high.times(1.0 / Math.max(above, 1)));
    Spot tail = from.towards(to, 0.15);
    Spot tip = from.towards(to, 0.9);
    if (tail.distance(tip) < 12) {
      return;
    }
    page.paper.line(Trace.through(tail, tip), Pen.full(Ink.BLACK, 1));
    double length = tail.distance(tip);
    double ux = (tip.x() - tail.x()) / length;
    double uy = (tip.y() - tail.y()) / length;
    Spot neck = tip.plus(-ux * 9, -uy * 9);
    page.paper.line(
        Trace.through(neck.plus(-uy * 5, ux * 5), tip, neck.plus(uy * 5, -ux * 5)),
        Pen.full(Ink.BLACK, 1));
    page.paper.area(Trace.circle(tail, 2.5), Ink.BLACK);
    page.labels.near(tail.towards(tip, 0.3), "up", Page.SIZE, Ink.BLACK, false);
  }

  private static Vector middle(Surface surface) {
    Vector sum = Vector.ZERO;
    for (Node corner : surface.corners()) {
      sum = sum.plus(corner.place());
    }
    return sum.times(1.0 / surface.corners().size());
  }

  /** A square. */
  static Trace square(Spot middle, double half) {
    return Trace.around(
        middle.plus(-half, -half),
        middle.plus(half, -half),
        middle.plus(half, half),
        middle.plus(-half, half));
  }
}
