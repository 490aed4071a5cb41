package spanledger.joint.sharing;

/** Thrown when nothing at a joint's face resists a force that is put on it. */
public final class UnresistedFaceException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  UnresistedFaceException(String message) {
    super(message);
  }
}
