package spanledger.action;

import java.util.List;
import java.util.Optional;
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
 * @param panel the name of the panel that it is decked with, if given
 */
public record Surface(
    String name,
    List<Node> corners,
    List<Member> carriedBy,
    double finishes,
    FloorBays bays,
    Optional<String> panel) {
  public Surface {
    corners = List.copyOf(corners);
    carriedBy = List.copyOf(carriedBy);
  }

  /** A floor divided at its spans, of which the decking is not said. */
  public Surface(String name, List<Node> corners, List<Member> carriedBy, double finishes) {
    this(name, corners, carriedBy, finishes, FloorBays.SPANS, Optional.empty());
  }
}
