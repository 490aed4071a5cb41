package spanledger.section.outline;

/**
 * Something that keeps an outline from being a section.
 *
 * @param where the place, mm
 * @param message what is wrong there and how to mend it, one sentence or two, without the
 *     coordinates
 */
public record OutlineFault(Point where, String message) {

  /** The message with the place in front. */
  @Override
  public String toString() {
    return "At " + where + " mm: " + message;
  }
}
