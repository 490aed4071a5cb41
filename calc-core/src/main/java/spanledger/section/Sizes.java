package spanledger.section;

import java.math.BigDecimal;
import java.math.MathContext;

/** Refuses sizes that make no outline, naming the size. */
final class Sizes {

  private Sizes() {}

  /** A size must be a finite number above zero. */
  static void requirePositive(String kind, String size, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          "The "
              + size
              + " of "
              + withArticle(kind)
              + " is "
              + text(value)
              + " mm, but must be greater than 0.");
    }
  }

  /**
   * A size must be below a limit that other sizes set.
   *
   * @param limitWords what the limit is, for example {@code half the depth}
   */
  static void requireBelow(
      String kind, String size, double value, String limitWords, double limit) {
    if (!(value < limit)) {
      throw new IllegalArgumentException(
          "The "
              + size
              + " of "
              + withArticle(kind)
              + " is "
              + text(value)
              + " mm, but must be less than "
              + limitWords
              + " ("
              + text(limit)
              + " mm).");
    }
  }

  private static String withArticle(String kind) {
    return ("AEIOUaeiou".indexOf(kind.charAt(0)) >= 0 ? "an " : "a ") + kind;
  }

  private static String text(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }
}
