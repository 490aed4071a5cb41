package spanledger.envelope;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import spanledger.action.LoadPath;
import spanledger.action.MovingLoad;
import spanledger.action.SegmentLoad;

/**
 * A moving load standing at one place.
 *
 * @param load the load
 * @param path the path it stands on
 * @param at its place along the path, mm; see {@link MovingLoad#placed}
 */
public record Standing(MovingLoad load, LoadPath path, double at) {

  /** What it puts on the segments. */
  public List<SegmentLoad> placed() {
    return load.placed(path, at);
  }

  /** The load and its place in words. */
  public String words() {
    return load.name() + " at " + place();
  }

  /** The place in words, to a thousandth of a millimetre, so that places differ in words, too. */
  public String place() {
    BigDecimal rounded = BigDecimal.valueOf(at).setScale(3, RoundingMode.HALF_EVEN);
    return path.name()
        + ", "
        + (rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString())
        + " mm";
  }
}
