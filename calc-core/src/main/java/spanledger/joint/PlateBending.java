package spanledger.joint;

/**
 * A base plate as it bends beside what stands on it, the stem, whose middle is at the foot's node.
 *
 * @param thickness mm
 * @param metal what it is made of
 * @param stemX of the stem along the plate's first side, mm
 * @param stemY along its second side, mm
 */
public record PlateBending(double thickness, FootMetal metal, double stemX, double stemY) {

  /**
   * @throws IllegalArgumentException if a size is not above zero
   */
  public PlateBending {
    if (!(thickness > 0) || !(stemX > 0) || !(stemY > 0)) {
      throw new IllegalArgumentException("A base plate and its stem need sizes above zero.");
    }
  }
}
