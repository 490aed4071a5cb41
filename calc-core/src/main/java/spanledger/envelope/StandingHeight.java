package spanledger.envelope;

import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;

/** How high members stand above the lowest support of the frame. */
public final class StandingHeight {

  /** What is lower than this, mm, does not stand above the ground. */
  private static final double LEAST = 1;

  private final double ground;

  /** Finds the lowest support. */
  public StandingHeight(Frame frame) {
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

  /** Whether the member stands above the lowest support. */
  public boolean isAbove(Member member) {
    return of(member) > LEAST;
  }

  private static double height(Node node) {
    return node.place().z();
  }
}
