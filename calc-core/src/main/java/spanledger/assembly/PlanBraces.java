package spanledger.assembly;

import java.util.Set;

/**
 * Braces in the plane of the floor, one from corner to corner of each bay, in zigzag.
 *
 * @param part what they are
 * @param bays the bays that have one, from 1; empty means all
 */
public record PlanBraces(Part part, Set<Integer> bays) {
  public PlanBraces {
    bays = Set.copyOf(bays);
  }
}
