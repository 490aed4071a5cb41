package spanledger.tables;

/**
 * Thrown when a data file does not say what it should; the message is one line that names file and
 * row.
 */
public final class TableFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  TableFormatException(String message) {
    super(message);
  }
}
