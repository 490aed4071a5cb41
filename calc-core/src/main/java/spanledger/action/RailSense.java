package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * A direction in which a rail is loaded, with its sense.
 *
 * @param direction the direction
 * @param backward whether it acts against its sense; only for {@link RailDirection#ALONG}, which
 *     may act both ways
 */
public record RailSense(RailDirection direction, boolean backward) {

  /** All senses of some directions. */
  public static List<RailSense> of(List<RailDirection> directions) {
    List<RailSense> senses = new ArrayList<>();
    for (RailDirection direction : directions) {
      senses.add(new RailSense(direction, false));
      if (direction == RailDirection.ALONG) {
        senses.add(new RailSense(direction, true));
      }
    }
    return senses;
  }

  /** The direction in words. */
  public String words() {
    return backward ? direction.words() + " backward" : direction.words();
  }

  /** The global direction on a segment of a rail, of length 1. */
  public Vector direction(Rail rail, Segment segment) {
    Vector forward =
        switch (direction) {
          case OUTWARD -> rail.outward();
          case INWARD -> rail.outward().times(-1);
          case DOWNWARD -> Vector.DOWN;
          case ALONG -> segment.to().minus(segment.from()).unit();
        };
    return backward ? forward.times(-1) : forward;
  }
}
