package spanledger.job;

import java.util.Locale;

/** Writes lengths and areas in messages. */
final class Lengths {

  private Lengths() {}

  /** A length, for example {@code 12.5 mm}. */
  static String words(double millimetres) {
    return String.format(Locale.ROOT, "%.1f mm", millimetres);
  }

  /** An area, for example {@code 4.80 m2}. */
  static String area(double squareMillimetres) {
    return String.format(Locale.ROOT, "%.2f m2", squareMillimetres / 1e6);
  }
}
