package spanledger.joint.sharing;

/**
 * Thrown when the parts of a joint's face differ so much in place, clearance or stiffness that no
 * balance of their forces can be found by numbers.
 */
public final class UnsettledFaceException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * @param left force left over, per load
   */
  UnsettledFaceException(double left) {
    super(
        "the forces at a face do not balance ("
            + left
            + " of the load is left over): some place, clearance or stiffness of its parts is out"
            + " of all proportion to the others");
  }
}
