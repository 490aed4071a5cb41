package spanledger.assembly;

import java.util.Optional;

/**
 * All that keeps a platform from swaying, each kind if it is there.
 *
 * @param ties level ties between posts
 * @param crosses crossing braces between posts
 * @param knees knee braces under the floor
 * @param plan braces in the plane of the floor
 */
public record Bracing(
    Optional<Ties> ties,
    Optional<CrossBraces> crosses,
    Optional<KneeBraces> knees,
    Optional<PlanBraces> plan) {

  /** No bracing. */
  public static final Bracing NONE =
      new Bracing(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
