package spanledger.envelope;

import java.math.BigDecimal;
import java.math.RoundingMode;
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

  /** The place in words, to a thousandth of a millimetre, so that places differ in words, too. */
  public String place() {
    BigDecimal rounded = BigDecimal.valueOf(at).setScale(3, RoundingMode.HALF_EVEN);
    return lane.segment().name()
        + ", "
        + (rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString())
        + " mm";
  }
}
