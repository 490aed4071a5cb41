package spanledger.envelope;

import java.util.List;

/**
 * The governing combination, place and cut of every effect that a check uses.
 *
 * @param strength by member and measure
 * @param deflections by member and direction
 * @param reactions by support and direction
 */
public record Findings(
    List<StrengthFinding> strength,
    List<DeflectionFinding> deflections,
    List<ReactionFinding> reactions) {
  public Findings {
    strength = List.copyOf(strength);
    deflections = List.copyOf(deflections);
    reactions = List.copyOf(reactions);
  }
}
