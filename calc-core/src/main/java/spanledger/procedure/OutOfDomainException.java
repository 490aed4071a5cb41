package spanledger.procedure;

/** Thrown when a procedure is run on values for which it is not stated to hold. */
public final class OutOfDomainException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  OutOfDomainException(String message) {
    super(message);
  }
}
