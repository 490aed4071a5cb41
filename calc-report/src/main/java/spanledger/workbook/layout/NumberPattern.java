package spanledger.workbook.layout;

import java.math.BigDecimal;
import spanledger.quantity.Dimension;

/**
 * How a number is shown. The cell always holds the full number.
 *
 * @param code the format in the notation of spreadsheets
 */
public record NumberPattern(String code) {

  /** Counters, row numbers. */
  public static final NumberPattern WHOLE = padded("0");

  /** Residuals: only their order of magnitude is of interest. */
  public static final NumberPattern RESIDUAL = padded("0.0E+00");

  private static final NumberPattern SCIENTIFIC = padded("0.0000E+00");
  private static final int MOST_DECIMALS = 7;

  /** Digits, with those before the point, that fit the width of a column. */
  private static final int WIDEST = 8;

  /**
   * The pattern for numbers of one quantity, for example of one column: as many decimals as give
   * the largest five significant digits (four for pure numbers), yet never fewer than usual for the
   * quantity unless it is too wide; with exponents only if it is too large or too small to read
   * otherwise.
   *
   * @param dimension what the numbers are
   * @param greatest the largest magnitude among them; 0 if all are zero
   */
  public static NumberPattern of(Dimension dimension, double greatest) {
    double magnitude = Math.abs(greatest);
    if (magnitude == 0 || isNoise(dimension, magnitude) || !Double.isFinite(magnitude)) {
      return decimals(usualDecimals(dimension));
    }
    if (magnitude >= 1e9 || magnitude < 1e-4) {
      return SCIENTIFIC;
    }
    int digits = dimension.isNone() ? 4 : 5;
    int beforePoint = 1 + (int) Math.floor(Math.log10(magnitude));
    int usual = Math.min(usualDecimals(dimension), Math.max(0, WIDEST - beforePoint));
    return decimals(Math.min(MOST_DECIMALS, Math.max(usual, digits - beforePoint)));
  }

  /**
   * The pattern that shows one given number as it was given, for lists whose numbers have nothing
   * in common.
   */
  public static NumberPattern asGiven(double value) {
    double magnitude = Math.abs(value);
    if (magnitude != 0 && (magnitude >= 1e9 || magnitude < 1e-4)) {
      return SCIENTIFIC;
    }
    int given = BigDecimal.valueOf(value).stripTrailingZeros().scale();
    return decimals(Math.max(0, Math.min(MOST_DECIMALS, given)));
  }

  /** Rounding left over where there is nothing; in the units of the core nobody builds so small. */
  private static boolean isNoise(Dimension dimension, double magnitude) {
    return magnitude < 1e-6
        && (dimension.equals(Dimension.FORCE)
            || dimension.equals(Dimension.MOMENT)
            || dimension.equals(Dimension.LENGTH)
            || dimension.equals(Dimension.STRESS));
  }

  private static int usualDecimals(Dimension dimension) {
    if (dimension.equals(Dimension.FORCE) || dimension.equals(Dimension.AREA)) {
      return 1;
    } else if (dimension.equals(Dimension.LENGTH) || dimension.equals(Dimension.STRESS)) {
      return 2;
    } else if (dimension.isNone() || dimension.equals(Dimension.LINE_LOAD)) {
      return 3;
    }
    return 0;
  }

  /** A gap as wide as a bracket keeps digits off the edge of the cell. */
  private static NumberPattern padded(String digits) {
    return new NumberPattern(digits + "_)");
  }

  private static NumberPattern decimals(int count) {
    return padded(count == 0 ? "#,##0" : "#,##0." + "0".repeat(count));
  }
}
