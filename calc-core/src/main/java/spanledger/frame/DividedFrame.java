package spanledger.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * A frame with further nodes within its segments, for what needs movements between nodes. Joints,
 * arms, supports and members stay as they are.
 *
 * @param frame the frame with its new nodes, named by member and place along it
 * @param pieces how many pieces each segment was cut into
 */
public record DividedFrame(Frame frame, int pieces) {

  /**
   * Cuts every segment into equal pieces.
   *
   * @param pieces at least 1
   */
  public static DividedFrame of(Frame whole, int pieces) {
    if (pieces < 1) {
      throw new IllegalArgumentException(
          "A segment must be cut into one piece at least, found " + pieces + ".");
    }
    List<Node> nodes = new ArrayList<>(whole.nodes());
    List<Member> members = new ArrayList<>();
    for (Member member : whole.members()) {
      List<Node> along = new ArrayList<>();
      along.add(member.nodes().get(0));
      for (Segment segment : whole.segmentsOf(member)) {
        Vector run = segment.to().minus(segment.from());
        for (int i = 1; i < pieces; i++) {
          Vector place = segment.from().plus(run.times((double) i / pieces));
          Node inner = new Node(segment.name() + " at " + i + "/" + pieces, place);
          nodes.add(inner);
          along.add(inner);
        }
        along.add(segment.second());
      }
      members.add(
          new Member(
              member.name(),
              member.role(),
              along,
              member.section(),
              member.alloy(),
              member.roll(),
              member.start(),
              member.end()));
    }
    return new DividedFrame(new Frame(nodes, members, whole.supports()), pieces);
  }

  /** The first piece of a segment of the whole frame; the others follow it. */
  public Segment firstPiece(Segment segment) {
    return frame.segments().get(segment.index() * pieces);
  }
}
