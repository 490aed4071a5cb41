package spanledger.assembly;

/** Divides a stretch evenly. */
final class EvenDivision {

  /** A stretch may be this much longer than asked before it is divided once more, mm. */
  private static final double ROUNDING = 1e-6;

  private EvenDivision() {}

  /** Into how few equal parts a stretch must be divided so that none is longer than the most. */
  static int parts(double stretch, double most) {
    return Math.max(1, (int) Math.ceil((stretch - ROUNDING) / most));
  }
}
