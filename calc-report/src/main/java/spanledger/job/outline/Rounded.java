package spanledger.job.outline;

import java.math.BigDecimal;
import java.math.MathContext;

/** Lengths as a reader of a message wants them. */
final class Rounded {

  private Rounded() {}

  /** Four digits and the unit, for example {@code 2.504 mm}. */
  static String mm(double length) {
    return Double.isFinite(length)
        ? new BigDecimal(length, new MathContext(4)).stripTrailingZeros().toPlainString() + " mm"
        : "no end";
  }
}
