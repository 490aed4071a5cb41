package spanledger.procedure;

/** What a spreadsheet can hold as a number typed into a formula. */
final class SpreadsheetNumber {

  /** Spreadsheets cut a typed number off after this many digits. From memory, confirm. */
  private static final int MOST_DIGITS = 15;

  /**
   * Within what every spreadsheet program reads; one that was tried refuses 1E-308. See
   * docs/decisions/0001-procedures.md.
   */
  private static final double SMALLEST = 1e-300;

  private static final double LARGEST = 1e300;

  private SpreadsheetNumber() {}

  /**
   * Returns the number if a formula can hold it exactly.
   *
   * @param what what the number is, to begin the message with
   * @throws IllegalArgumentException if it is not finite, too large, too small, or has more than 15
   *     significant digits
   */
  static double require(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must be finite, found " + value + ".");
    }
    if (value != 0 && (Math.abs(value) < SMALLEST || Math.abs(value) > LARGEST)) {
      throw new IllegalArgumentException(
          what + " must be zero or between 1E-300 and 1E300 in size, found " + value + ".");
    }
    if (NumberText.significantDigits(value) > MOST_DIGITS) {
      throw new IllegalArgumentException(
          what
              + " has more than 15 significant digits, found "
              + value
              + "; round it or write it as a formula.");
    }
    return value;
  }
}
