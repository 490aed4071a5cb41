package spanledger.verification.procedure;

/**
 * A value, and the size against which a difference from it is to be judged.
 *
 * <p>Programs round, and spreadsheet programs set a difference of nearly equal numbers to zero. So
 * the value of {@code (a+b)-a} can only be compared to within a share of {@code a}. The scale is
 * the largest effect on the value that one unit of relative error in each number on the way can
 * have; without cancellation it is a small multiple of the value.
 *
 * @param value the value, or NaN if the formula certainly has none
 * @param scale at least the size of the value
 */
record Estimate(double value, double scale) {

  /** Certainly without a value. */
  static final Estimate MISSING = new Estimate(Double.NaN, 0);

  /**
   * How far programs are taken to differ, as a share of the scale, when it is asked whether a
   * comparison or the edge of a domain is too close to call. Far more than the 2E-16 of one
   * rounding, and the 4E-15 below which LibreOffice takes numbers as equal; far less than what
   * agreement is judged by.
   */
  static final double CLOSE_CALL = 1e-12;

  /** Within spreadsheets' range with room on both sides. */
  private static final double SMALLEST = 1e-280;

  private static final double LARGEST = 1e280;

  /** A sample that cannot be judged. */
  static final class UndecidedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UndecidedException(String reason) {
      super(reason);
    }
  }

  static Estimate exact(double value) {
    return new Estimate(value, Math.abs(value));
  }

  /**
   * A result on the way.
   *
   * @param effect the effect of the operands' scales on the value
   */
  static Estimate result(double value, double effect) {
    double scale = Math.abs(value) + effect;
    if (!(scale <= LARGEST) || (value != 0 && Math.abs(value) < SMALLEST)) {
      throw new UndecidedException("out of range");
    }
    return new Estimate(value, scale);
  }

  boolean missing() {
    return Double.isNaN(value);
  }

  /** How far the value may be off. */
  double doubt() {
    return CLOSE_CALL * scale;
  }

  /** The least size the value can have. */
  double leastSize() {
    return Math.max(0, Math.abs(value) - doubt());
  }

  /** Whether the value is just zero: made of zeros only. */
  boolean isZero() {
    return scale == 0;
  }

  /**
   * The sign of the value.
   *
   * @throws UndecidedException if it is too close to zero to tell
   */
  int sign() {
    if (!isZero() && Math.abs(value) <= doubt()) {
      throw new UndecidedException("too close to zero");
    }
    return (int) Math.signum(value);
  }

  Estimate negated() {
    return new Estimate(-value, scale);
  }
}
