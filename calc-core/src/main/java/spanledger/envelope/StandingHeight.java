package spanledger.envelope;

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
  }

  /** The height of the member's lowest node above the lowest support, mm. */
  public double of(Member member) {
    return member.nodes().stream().mapToDouble(StandingHeight::height).min().orElse(0) - ground;
  }

  /**
   * Whether the member is part of a floor that stands above the lowest support. Stringers and
   * treads are not: a share of their small height is no measure of how far a stair may give.
   */
  public boolean isAbove(Member member) {
    return of(member) > LEAST && !slopes(member) && !onSlopes.containsAll(member.nodes());
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
