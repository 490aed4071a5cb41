package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.frame.MemberEnd;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.source.Quoted;

/**
 * Whether a member is one straight piece.
 *
 * @param along its nodes in order, at least two
 */
record MemberShape(List<Node> along) {

  /**
   * What is wrong with a node.
   *
   * @param at which node, from 0
   * @param words what is wrong
   */
  record Fault(int at, String words) {}

  /** Whether neighbouring nodes are at one place; the nodes themselves are reported for that. */
  boolean hasNeighboursAtOnePlace() {
    for (int i = 0; i + 1 < along.size(); i++) {
      if (span(i).norm() <= Tolerance.SAME_PLACE) {
        return true;
      }
    }
    return false;
  }

  /**
   * The first node that does not follow the ones before it on the line from the first to the last
   * node.
   */
  Optional<Fault> offTheLine() {
    Vector first = along.get(0).place();
    Vector whole = along.get(along.size() - 1).place().minus(first);
    if (whole.norm() <= Tolerance.SAME_PLACE) {
      return Optional.of(fault(along.size() - 1, "comes back to its start"));
    }
    double reached = 0;
    for (int i = 1; i < along.size(); i++) {
      Vector arm = along.get(i).place().minus(first);
      double off = arm.cross(whole.unit()).norm();
      if (off > Tolerance.SAME_PLACE) {
        return Optional.of(fault(i, "is " + Lengths.words(off) + " off the line between its ends"));
      }
      if (arm.dot(whole) < reached) {
        return Optional.of(fault(i, "turns back towards its start"));
      }
      reached = arm.dot(whole);
    }
    return Optional.empty();
  }

  /**
   * Whether every piece between neighbouring nodes goes forward by more than 1 mm, offsets counted.
   */
  boolean leavesLength(MemberEnd start, MemberEnd end) {
    int last = along.size() - 2;
    for (int i = 0; i <= last; i++) {
      Vector piece = span(i);
      Vector changed =
          piece
              .minus(i == 0 ? start.offset() : Vector.ZERO)
              .plus(i == last ? end.offset() : Vector.ZERO);
      if (changed.dot(piece.unit()) <= Tolerance.SAME_PLACE) {
        return false;
      }
    }
    return true;
  }

  private Vector span(int index) {
    return along.get(index + 1).place().minus(along.get(index).place());
  }

  private Fault fault(int at, String words) {
    return new Fault(
        at, "a member that at node " + Quoted.text(along.get(at).name()) + " " + words);
  }
}
