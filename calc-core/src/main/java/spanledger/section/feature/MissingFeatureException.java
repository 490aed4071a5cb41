package spanledger.section.feature;

/** The outline has no such feature at the place given; the message says what is there instead. */
public final class MissingFeatureException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  public MissingFeatureException(String message) {
    super(message);
  }
}
