package spanledger.assembly;

import java.util.Set;

/**
 * Short braces from posts up to floor members.
 *
 * @param part what they are
 * @param drop how far below the floor they meet the post, mm
 * @param reach how far from the post they meet the floor member, mm
 * @param across whether there are knee braces to the bearers between the posts
 * @param along whether there are knee braces to the edge beams
 * @param lines the pairs of posts that have them, from 1; empty means all
 */
public record KneeBraces(
    Part part, double drop, double reach, boolean across, boolean along, Set<Integer> lines) {
  public KneeBraces {
    lines = Set.copyOf(lines);
  }
}
