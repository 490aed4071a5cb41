package spanledger.tables;

/**
 * Thrown when a text is not a quantity of the expected kind; the message is one line for the user.
 */
public final class QuantityFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String found;
  private final String expected;
  private final String remedy;

  /**
   * A fault.
   *
   * @param found what was found
   * @param expected what was expected instead; empty if not known
   * @param remedy sentences on how to mend it; empty if what was expected says it
   */
  QuantityFormatException(String found, String expected, String remedy) {
    super(
        found
            + (expected.isEmpty() ? "" : "; expected " + expected)
            + "."
            + (remedy.isEmpty() ? "" : " " + remedy));
    this.found = found;
    this.expected = expected;
    this.remedy = remedy;
  }

  /** What was found, for example {@code "2.5" has no unit}. */
  public String found() {
    return found;
  }

  /** What was expected, for example {@code a force, for example 1.1 kN}. */
  public String expected() {
    return expected;
  }

  /** How to mend it in sentences; empty if what was expected says it. */
  public String remedy() {
    return remedy;
  }
}
