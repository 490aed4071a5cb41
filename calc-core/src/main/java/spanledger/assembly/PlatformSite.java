package spanledger.assembly;

import java.util.Optional;

/**
 * What is known of a platform's use and surroundings beyond its frame.
 *
 * @param clearWidth free width to walk on, mm
 * @param headroom free height above the floor, mm
 * @param deckOpening the widest opening in the decking, mm
 * @param peopleBelow whether people work or pass below
 */
public record PlatformSite(
    Optional<Double> clearWidth,
    Optional<Double> headroom,
    Optional<Double> deckOpening,
    boolean peopleBelow) {

  /** Nothing known. */
  public static final PlatformSite UNKNOWN =
      new PlatformSite(Optional.empty(), Optional.empty(), Optional.empty(), false);
}
