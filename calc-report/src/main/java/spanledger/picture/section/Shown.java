package spanledger.picture.section;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as a reader of a picture wants them. */
final class Shown {

  private Shown() {}

  /** A dimension in mm, to a hundredth. */
  static String length(double mm) {
    return plain(BigDecimal.valueOf(mm).setScale(2, RoundingMode.HALF_UP));
  }

  /** A number to four digits; powers of ten beyond a million. */
  static String digits(double value) {
    if (!Double.isFinite(value)) {
      return "none";
    }
    if (value != 0 && (Math.abs(value) >= 1e6 || Math.abs(value) < 1e-3)) {
      int power = (int) Math.floor(Math.log10(Math.abs(value)));
      BigDecimal digits =
          new BigDecimal(value)
              .movePointLeft(power)
              .round(new MathContext(4, RoundingMode.HALF_UP));
      return plain(digits) + "·10" + raised(power);
    }
    return plain(new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_UP)));
  }

  /** An angle in degrees, to a hundredth. */
  static String degrees(double angle) {
    return plain(BigDecimal.valueOf(Math.toDegrees(angle)).setScale(2, RoundingMode.HALF_UP)) + "°";
  }

  private static String raised(int power) {
    StringBuilder text = new StringBuilder();
    for (char digit : Integer.toString(power).toCharArray()) {
      text.append(digit == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0'));
    }
    return text.toString();
  }

  private static String plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.signum() == 0 ? "0" : stripped.toPlainString().replace('-', '−');
  }
}
