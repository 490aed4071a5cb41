package spanledger.resistance.joint;

import java.util.Comparator;
import java.util.List;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * One run of a check of a part of a joint.
 *
 * @param working all its numbers
 * @param uses the steps that must be at most 1, at least one
 */
public record JointCheck(Working working, List<JointUse> uses) {

  /**
   * @throws IllegalArgumentException if there is no use, or the procedure lacks one of its symbols
   */
  public JointCheck {
    uses = List.copyOf(uses);
    if (uses.isEmpty()) {
      throw new IllegalArgumentException("A check must say which steps are at most 1.");
    }
    for (JointUse use : uses) {
      working.value(use.symbol());
      working.value(use.demand());
      working.value(use.capacity());
    }
  }

  /** The use that is greatest. */
  public JointUse governing() {
    return uses.stream()
        .max(Comparator.comparingDouble(use -> working.value(use.symbol())))
        .orElseThrow();
  }

  /** The greatest use; at most 1 passes. */
  public double utilisation() {
    return working.value(governing().symbol());
  }

  /** A step of this check as an input of another. */
  public Feed feed(String symbol) {
    return working.feed(symbol);
  }
}
