package spanledger.state;

import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;

/**
 * What one hold with play, or one that acts one way, does in a state.
 *
 * @param where which hold it is
 * @param name where it is, in words, for example {@code support of node F1 along Z}
 * @param condition what it does
 * @param movement how far it has moved, mm or rad: of a support, the node; of a joint, node against
 *     member end
 * @param force what it bears, N or N·mm, positive with positive movement
 * @param holding its stiffness in this condition, N/mm or N·mm/rad; infinite if rigid, 0 if open
 * @param origin the movement from which it holds, mm or rad: force = holding · (movement − origin)
 * @param words for readers, for example {@code foot F1 has lifted}
 */
public record HoldReport(
    Where where,
    String name,
    Condition condition,
    double movement,
    double force,
    double holding,
    double origin,
    String words) {

  /** Which hold of the frame. */
  public sealed interface Where {

    /** One freedom of a support. */
    record OfSupport(Node node, Freedom freedom) implements Where {}

    /**
     * One turn of a member end.
     *
     * @param joint 0 start about y, 1 start about z, 2 end about y, 3 end about z
     */
    record OfJoint(Segment segment, int joint) implements Where {}

    /** A member along its axis; bar and joints in series. */
    record OfAxis(Segment segment) implements Where {}
  }
}
