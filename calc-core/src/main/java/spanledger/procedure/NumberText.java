package spanledger.procedure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as text: exactly for formulas, shortened for reading. Independent of the locale. */
final class NumberText {

  private NumberText() {}

  /** The shortest text that reads back to the same number, as spreadsheets write it. */
  static String exact(double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    String text = Double.toString(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text.replace(".0E", "E");
  }

  /** Five significant digits, for reading. */
  static String readable(double value) {
    if (value == 0 || !Double.isFinite(value)) {
      return value == 0 ? "0" : Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(5)).stripTrailingZeros();
    double magnitude = Math.abs(value);
    return magnitude >= 1e7 || magnitude < 1e-3 ? rounded.toString() : rounded.toPlainString();
  }
}
