package spanledger.envelope;

import java.util.List;
import java.util.Optional;
import spanledger.analysis.SegmentEffect;
import spanledger.frame.Member;

/**
 * Between which limits the internal forces of a member lie under the strength combinations: sums
 * over load cases, first order.
 *
 * @param member the member
 * @param atEnds at both ends of each of its segments, the greatest and the least of each internal
 *     force
 * @param governing the greatest and the least of each internal force along the whole member
 */
public record ForceEnvelope(
    Member member, List<ForceExtreme> atEnds, List<ForceExtreme> governing) {

  public ForceEnvelope {
    atEnds = List.copyOf(atEnds);
    governing = List.copyOf(governing);
  }

  /** An extreme along the whole member; empty if no combination was searched. */
  public Optional<ForceExtreme> governing(SegmentEffect effect, boolean greatest) {
    return governing.stream()
        .filter(e -> e.effect() == effect && e.greatest() == greatest)
        .findFirst();
  }
}
