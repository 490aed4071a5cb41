package spanledger.envelope;

import java.util.Locale;
import spanledger.action.MovingLoad;
import spanledger.action.SegmentLoad;

/**
 * A moving load standing at one place.
 *
 * @param load the load
 * @param lane the segment it stands on, with its direction there
 * @param at distance from the segment's start, mm
 */
public record Standing(MovingLoad load, MovingLoad.Lane lane, double at) {

  /** The load itself. */
  public SegmentLoad.Point placed() {
    return load.placed(lane, at);
  }

  /** The load and its place in words. */
  public String words() {
    return load.name() + " at " + place();
  }

  /** The place in words. */
  public String place() {
    return lane.segment().name() + ", " + String.format(Locale.ROOT, "%.0f mm", at);
  }
}
