package spanledger.envelope;

import java.util.Locale;
import spanledger.frame.Segment;

/**
 * A cut through a segment.
 *
 * @param segment the segment
 * @param x distance from the segment's start, mm
 */
public record Station(Segment segment, double x) {

  /** The cut in words. */
  public String words() {
    return segment.name() + ", " + String.format(Locale.ROOT, "%.0f mm", x);
  }
}
