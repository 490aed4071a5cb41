package spanledger.geometry;

import java.util.Locale;

/** Writes sizes in sentences. */
final class SizeText {

  private SizeText() {}

  static String mm(double length) {
    return Double.isInfinite(length) ? "any size" : String.format(Locale.ROOT, "%.1f mm", length);
  }
}
