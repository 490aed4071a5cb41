package spanledger.workbook.layout;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A number as text for reading, to five significant digits, in brackets if negative: as a live
 * formula and the same in Java.
 *
 * <p>The formula leaves nothing to how a program likes to write very large or small numbers: it
 * cuts off the power of ten itself.
 */
final class RoundedText {

  /** What is left of a sum by rounding reads as nothing; programs round differently. */
  private static final double NOTHING = 1e-12;

  private RoundedText() {}

  /** The formula for the number at an address. */
  static String formula(String at) {
    String size = "ABS(" + at + ")";
    String power = "INT(LOG10(" + size + "))";
    String plain = "ROUND(" + size + ",4-" + power + ")";
    String scaled = "ROUND(" + size + "/10^" + power + ",4)&\"E\"&" + power;
    String digits =
        "IF(" + size + ">=10000000," + scaled + ",IF(" + size + "<0.001," + scaled + ",";
    return "IF("
        + size
        + "<0.000000000001,\"0\",IF("
        + at
        + "<0,\"(-\",\"\")&"
        + digits
        + plain
        + "))&IF("
        + at
        + "<=-0.000000000001,\")\",\"\"))";
  }

  /** What the formula gives. */
  static String of(double value) {
    double size = Math.abs(value);
    if (size < NOTHING) {
      return "0";
    }
    int power = (int) Math.floor(Math.log10(size));
    String digits =
        size >= 1e7 || size < 1e-3
            ? rounded(size / Math.pow(10, power), 4) + "E" + power
            : rounded(size, 4 - power);
    return value < 0 ? "(-" + digits + ")" : digits;
  }

  /** Spreadsheets round the decimal number they show, half away from zero. */
  private static String rounded(double value, int digits) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.toPlainString();
  }
}
