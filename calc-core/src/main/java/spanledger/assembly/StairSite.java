package spanledger.assembly;

import java.util.List;
import java.util.Optional;

/**
 * What is known of a stair's use and surroundings beyond its frame.
 *
 * @param clearWidth free width to walk on, mm
 * @param headroom least free height above the line through the nosings, upright, mm
 * @param builtRises the rises as measured after building, from below, the last one up to the floor,
 *     mm; empty if not measured
 */
public record StairSite(
    Optional<Double> clearWidth, Optional<Double> headroom, List<Double> builtRises) {
  public StairSite {
    builtRises = List.copyOf(builtRises);
  }

  /** Nothing known. */
  public static final StairSite UNKNOWN =
      new StairSite(Optional.empty(), Optional.empty(), List.of());
}
