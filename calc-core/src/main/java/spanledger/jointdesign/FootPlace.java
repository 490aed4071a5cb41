package spanledger.jointdesign;

import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;

/**
 * A foot under a supported node. Its forces are those of the support, whatever stands on it.
 *
 * @param support the support
 */
public record FootPlace(Support support) implements JointPlace {

  @Override
  public String name() {
    return "foot at " + node().name();
  }

  @Override
  public Node node() {
    return support.node();
  }

  /** The end of the first segment at the foot; only to say where it is. */
  @Override
  public Station station(Frame frame) {
    for (Segment segment : frame.segments()) {
      if (segment.first().equals(node())) {
        return new Station(segment, 0);
      }
      if (segment.second().equals(node())) {
        return new Station(segment, segment.length());
      }
    }
    throw new IllegalArgumentException("No member stands on " + name() + ".");
  }
}
