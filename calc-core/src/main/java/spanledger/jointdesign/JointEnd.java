package spanledger.jointdesign;

import java.util.List;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;

/**
 * An end of a member.
 *
 * @param member the member
 * @param start whether its start, or else its end, is meant
 */
public record JointEnd(Member member, boolean start) implements JointPlace {

  /** The member's name and which end, for example {@code edge-north, start}. */
  @Override
  public String name() {
    return member.name() + ", " + (start ? "start" : "end");
  }

  @Override
  public Node node() {
    List<Node> nodes = member.nodes();
    return start ? nodes.get(0) : nodes.get(nodes.size() - 1);
  }

  @Override
  public Station station(Frame frame) {
    List<Segment> segments = frame.segmentsOf(member);
    Segment last = segments.get(segments.size() - 1);
    return start ? new Station(segments.get(0), 0) : new Station(last, last.length());
  }
}
