package spanledger.material;

import java.math.BigDecimal;

/**
 * The wall thicknesses for which a strength is published.
 *
 * @param over thinner walls and this thickness itself are left out, mm; 0 if there is no lower end
 * @param upTo the thickest wall, included, mm; infinite if there is no upper end
 */
public record ThicknessRange(double over, double upTo) {

  public ThicknessRange {
    if (!(over >= 0 && over < upTo)) {
      throw new IllegalArgumentException(
          "A thickness range must start at 0 mm or more and end above its start, found over "
              + over
              + " mm up to "
              + upTo
              + " mm.");
    }
  }

  /** Whether the thickness (mm) is in the range. */
  public boolean contains(double thickness) {
    return thickness > over && thickness <= upTo;
  }

  /** The range in words, for example {@code over 3 mm, up to 25 mm}. */
  public String words() {
    if (Double.isInfinite(upTo)) {
      return over == 0 ? "any thickness" : "over " + text(over);
    }
    return (over == 0 ? "" : "over " + text(over) + ", ") + "up to " + text(upTo);
  }

  /** A thickness for reading, for example {@code 2.5 mm}. */
  static String text(double thickness) {
    return BigDecimal.valueOf(thickness).stripTrailingZeros().toPlainString() + " mm";
  }
}
