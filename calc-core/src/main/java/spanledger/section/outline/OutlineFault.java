package spanledger.section.outline;

/**
 * Something that keeps an outline from being a section.
 *
 * @param where the place, mm
 * @param message what is wrong there and how to mend it, one sentence or two, without the
 *     coordinates
 * @param ring the ring it lies on: 0 for the outer ring, then the holes in order; of two rings the
 *     later
 */
public record OutlineFault(Point where, String message, int ring) {

  /** A fault of a ring on its own. */
  public OutlineFault(Point where, String message) {
    this(where, message, 0);
  }

  /** The message with the place in front. */
  @Override
  public String toString() {
    return "At " + where + " mm: " + message;
  }
}
