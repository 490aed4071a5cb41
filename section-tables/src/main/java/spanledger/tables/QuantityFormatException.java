package spanledger.tables;

/**
 * Thrown when a text is not a quantity of the expected kind; the message is one line for the user.
 */
public final class QuantityFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  QuantityFormatException(String message) {
    super(message);
  }
}
