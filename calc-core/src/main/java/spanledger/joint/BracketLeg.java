package spanledger.joint;

/**
 * Where the leg of a bracket that lies in a face bends away from it: tension of the bolts bends the
 * leg about this line. The leg is the first ply of the face.
 *
 * @param acrossFirst whether the line crosses the first axis of the face (else the second)
 * @param at where it crosses, mm
 * @param radius of the fillet in the corner, mm
 */
public record BracketLeg(boolean acrossFirst, double at, double radius) {

  /**
   * @throws IllegalArgumentException if the radius is negative
   */
  public BracketLeg {
    if (!(radius >= 0)) {
      throw new IllegalArgumentException("A fillet cannot have a negative radius.");
    }
  }
}
