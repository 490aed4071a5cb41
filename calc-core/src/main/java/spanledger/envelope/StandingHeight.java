package spanledger.envelope;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Set;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;

/** How high members stand above the lowest support of the frame. */
public final class StandingHeight {

  /** What is lower than this, mm, does not stand above the ground. */
  private static final double LEAST = 1;

  /** A member that rises by more than this share of its length slopes. */
  private static final double LEVEL = 1e-3;

  private final double ground;
  private final Set<Node> onSlopes = new HashSet<>();
  private final boolean withFloors;

  /** Finds the lowest support and what lies between the ends of sloping floor members. */
  public StandingHeight(Frame frame) {
    for (Member member : frame.members()) {
      if (member.role() == MemberRole.FLOOR && slopes(member)) {
        onSlopes.addAll(member.nodes().subList(1, member.nodes().size() - 1));
      }
    }
    ground =
        frame.supports().stream()
            .mapToDouble(s -> s.node().place().z())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    withFloors = frame.members().stream().anyMatch(this::isFloorAbove);
  }

  /** The height above the lowest support that a member's sway is measured by, mm. */
  public double of(Member member) {
    return height(measure(member)) - ground;
  }

  /** The node at that height: the lowest one, but of a leg its top. */
  public static Node measure(Member member) {
    Comparator<Node> byHeight = Comparator.comparingDouble(StandingHeight::height);
    return member.role() == MemberRole.LEG
        ? Collections.max(member.nodes(), byHeight)
        : Collections.min(member.nodes(), byHeight);
  }

  /**
   * Whether the sway of a member is judged: of floor members above the lowest support and, where a
   * frame has none, of its legs. Stringers and treads are not: a share of their small height is no
   * measure of how far a stair may give.
   */
  public boolean isJudged(Member member) {
    return isFloorAbove(member)
        || (!withFloors && member.role() == MemberRole.LEG && of(member) > LEAST);
  }

  private boolean isFloorAbove(Member member) {
    return member.role() == MemberRole.FLOOR
        && of(member) > LEAST
        && !slopes(member)
        && !onSlopes.containsAll(member.nodes());
  }

  private static boolean slopes(Member member) {
    double rise =
        height(member.nodes().get(0)) - height(member.nodes().get(member.nodes().size() - 1));
    return Math.abs(rise) > LEVEL * member.length();
  }

  private static double height(Node node) {
    return node.place().z();
  }
}
