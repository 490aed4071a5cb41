package spanledger.procedure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as text: exactly for formulas, shortened for reading. Independent of the locale. */
final class NumberText {

  /** A double is told apart from its neighbours by at most this many significant digits. */
  private static final int MOST_DIGITS = 17;

  private NumberText() {}

  /** The shortest text that reads back to the same finite number, as spreadsheets write it. */
  static String exact(double value) {
    return value == 0 ? "0" : text(shortest(value), -5, 14);
  }

  /** Five significant digits, for reading. */
  static String readable(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    return value == 0 ? "0" : text(new BigDecimal(value).round(new MathContext(5)), -3, 6);
  }

  /** How many significant digits the shortest text of a finite number has. */
  static int significantDigits(double value) {
    return value == 0 ? 1 : shortest(value).precision();
  }

  /** {@link Double#toString} before Java 19 does not always give the shortest. */
  private static BigDecimal shortest(double value) {
    BigDecimal all = new BigDecimal(value);
    for (int digits = 1; digits < MOST_DIGITS; digits++) {
      BigDecimal rounded = all.round(new MathContext(digits));
      if (rounded.doubleValue() == value) {
        return rounded.stripTrailingZeros();
      }
    }
    return all.round(new MathContext(MOST_DIGITS)).stripTrailingZeros();
  }

  private static String text(BigDecimal number, int plainFrom, int plainTo) {
    BigDecimal significant = number.stripTrailingZeros();
    int exponent = significant.precision() - significant.scale() - 1;
    return plainFrom <= exponent && exponent <= plainTo
        ? significant.toPlainString()
        : new BigDecimal(significant.unscaledValue(), significant.precision() - 1) + "E" + exponent;
  }
}
