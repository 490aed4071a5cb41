package spanledger.action;

import java.util.List;
import spanledger.frame.Member;
import spanledger.frame.Node;

/**
 * A floor that spans one way between parallel members.
 *
 * @param name unique among surfaces
 * @param corners its outline in order, at least three nodes in one plane
 * @param carriedBy the parallel members it lies on
 * @param finishes weight of decking and finishes, MPa (N/mm²)
 * @param bays into which parts it is divided that may be loaded or not
 */
public record Surface(
    String name, List<Node> corners, List<Member> carriedBy, double finishes, FloorBays bays) {
  public Surface {
    corners = List.copyOf(corners);
    carriedBy = List.copyOf(carriedBy);
  }

  /** A floor divided at its spans. */
  public Surface(String name, List<Node> corners, List<Member> carriedBy, double finishes) {
    this(name, corners, carriedBy, finishes, FloorBays.SPANS);
  }
}
