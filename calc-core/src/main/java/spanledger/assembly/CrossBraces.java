package spanledger.assembly;

import java.util.Set;

/**
 * Pairs of crossing braces between neighbouring posts; the two of a pair are not joined where they
 * cross.
 *
 * @param part what they are
 * @param from height of their lower ends above the platform's ground, mm
 * @param to height of their upper ends, mm
 * @param sides the sides on which they are
 * @param bays the bays of the long sides that have them, from 1; empty means all
 */
public record CrossBraces(Part part, double from, double to, Set<Side> sides, Set<Integer> bays) {
  public CrossBraces {
    sides = Set.copyOf(sides);
    bays = Set.copyOf(bays);
  }
}
