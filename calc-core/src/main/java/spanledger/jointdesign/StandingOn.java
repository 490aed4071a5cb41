package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/**
 * The members that meet at a foot.
 *
 * @param axes away from the foot, of length 1; one for each member
 */
record StandingOn(List<Vector> axes) {

  /** From which sine of its slope on a member is a post beside members that are not. */
  private static final double STEEP = Math.sin(Math.PI / 4);

  StandingOn {
    axes = List.copyOf(axes);
  }

  static StandingOn of(Frame frame, Support support) {
    List<Vector> axes = new ArrayList<>();
    for (Member member : frame.members()) {
      for (Segment segment : frame.segmentsOf(member)) {
        boolean first = segment.first().equals(support.node());
        if (first || segment.second().equals(support.node())) {
          Vector along = segment.second().place().minus(segment.first().place()).unit();
          axes.add(first ? along : along.times(-1));
          break;
        }
      }
    }
    return new StandingOn(axes);
  }

  /**
   * The axis of the one post: of the only member, or of the only one steeper than 45 degrees.
   *
   * @throws IllegalArgumentException if there is not one
   */
  Vector postAxis() {
    List<Vector> posts =
        axes.size() == 1 ? axes : axes.stream().filter(axis -> Math.abs(axis.z()) > STEEP).toList();
    if (posts.size() != 1) {
      throw new IllegalArgumentException(
          axes.size()
              + " members meet at this clamp foot, "
              + posts.size()
              + " of them steeper than 45 deg; a clamp holds one post. Let one post stand on it, or"
              + " check it by hand.");
    }
    return posts.get(0);
  }
}
