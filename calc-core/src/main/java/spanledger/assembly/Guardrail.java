package spanledger.assembly;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The guardrail round a platform.
 *
 * @param height of the top rail above the floor, mm
 * @param topRail what the top rail is
 * @param middleRails the middle rails, from below; may be none
 * @param toeBoard the toe-board, if there is one
 * @param sides the sides that have a guardrail; the others are open
 * @param railPost what posts are that stand on the floor alone; needed where there are any
 * @param postSpacing the greatest distance between posts, mm; where posts of the platform stand
 *     wider, rail posts come between them
 * @param posts places of further rail posts
 * @param gates gates, which are closed when the guardrail is loaded
 */
public record Guardrail(
    double height,
    Part topRail,
    List<MiddleRail> middleRails,
    Optional<ToeBoard> toeBoard,
    Set<Side> sides,
    Optional<Part> railPost,
    double postSpacing,
    List<PostPlace> posts,
    List<Gate> gates) {

  public Guardrail {
    middleRails = List.copyOf(middleRails);
    sides = Set.copyOf(sides);
    posts = List.copyOf(posts);
    gates = List.copyOf(gates);
  }

  /**
   * A middle rail.
   *
   * @param part what it is
   * @param height above the floor, mm
   */
  public record MiddleRail(Part part, double height) {}

  /**
   * The toe-board.
   *
   * @param part what it is
   * @param height its depth from lower to upper edge, mm
   * @param gap between floor and lower edge, mm
   */
  public record ToeBoard(Part part, double height, double gap) {
    /** The height of its middle above the floor, mm. */
    public double middle() {
      return gap + height / 2;
    }
  }

  /**
   * The place of a rail post that stands on the floor.
   *
   * @param side the side
   * @param at along the side, mm
   */
  public record PostPlace(Side side, double at) {}

  /**
   * A gate in a long or a short side. It is calculated as closed, with rails like those beside it.
   *
   * @param side the side
   * @param bay the bay of a long side, from 1; 1 for a short side
   * @param from its distance from the beginning of the bay, mm
   * @param width its width, mm; empty for the whole bay
   */
  public record Gate(Side side, int bay, double from, Optional<Double> width) {}
}
