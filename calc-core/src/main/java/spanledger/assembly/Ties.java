package spanledger.assembly;

import java.util.Set;

/**
 * Level ties from post to post.
 *
 * @param part what they are
 * @param height above the platform's ground, mm
 * @param sides the sides on which they are; on the short sides they run from south to north
 */
public record Ties(Part part, double height, Set<Side> sides) {
  public Ties {
    sides = Set.copyOf(sides);
  }
}
