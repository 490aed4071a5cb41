package spanledger.section.mesh;

/** An outline could not be meshed within the allowed number of points. */
public final class MeshingException extends RuntimeException {

  public MeshingException(String message) {
    super(message);
  }
}
