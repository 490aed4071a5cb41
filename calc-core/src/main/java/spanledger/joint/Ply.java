package spanledger.joint;

import java.util.Optional;
import spanledger.material.Alloy;

/**
 * A plate or wall through which the bolts of a face go: a rectangle in the face.
 *
 * @param name for example {@code bracket leg}
 * @param thickness mm
 * @param alloy what it is made of
 * @param hole diameter of its holes, mm
 * @param from the corner with the lesser coordinates
 * @param to the opposite corner
 * @param side to which part it belongs; empty if the job does not say, and then the ply is taken to
 *     bear all that the bolts carry
 */
public record Ply(
    String name,
    double thickness,
    Alloy alloy,
    double hole,
    FacePlace from,
    FacePlace to,
    Optional<PlySide> side) {

  /**
   * @throws IllegalArgumentException if a size is not above zero
   */
  public Ply {
    if (!(thickness > 0) || !(hole > 0) || !(to.a() > from.a()) || !(to.b() > from.b())) {
      throw new IllegalArgumentException("Ply " + name + " needs sizes above zero.");
    }
  }
}
