package spanledger.envelope;

/**
 * The places on a segment at which a moving load is tried before refinement: evenly spaced, both
 * ends included.
 */
final class LanePlaces {

  /**
   * How far before the segment's end the last place lies, mm. A load on the very end goes straight
   * into the node and leaves no shear in the segment; one just before it leaves all of it.
   */
  private static final double JUST_BEFORE = 1e-6;

  private final int divisions;

  /**
   * @param divisions into how many equal parts a segment is divided; at least 1
   */
  LanePlaces(int divisions) {
    this.divisions = divisions;
  }

  /** The last place; the first is 0. */
  int last() {
    return divisions;
  }

  /** A place, mm from the start of a segment. */
  double at(double length, int place) {
    return within(length, length * place / divisions);
  }

  /** The place itself, or the last place before the end. */
  static double within(double length, double at) {
    return Math.min(at, length - JUST_BEFORE);
  }

  /** The place before, mm, or the first. */
  double before(double length, int place) {
    return at(length, Math.max(0, place - 1));
  }

  /** The place after, mm, or the last. */
  double after(double length, int place) {
    return at(length, Math.min(divisions, place + 1));
  }
}
