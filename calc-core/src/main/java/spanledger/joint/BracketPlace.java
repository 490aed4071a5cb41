package spanledger.joint;

import java.util.Optional;
import spanledger.frame.Vector;

/**
 * Where a bracket that is described once stands at a member end: mirrored, then turned about u,
 * then shifted.
 *
 * @param mirror the axis square to the plane through the member end in which it is mirrored
 * @param quarterTurns about u, from v towards w; 0 to 3
 * @param at the shift along u, v, w, mm
 */
public record BracketPlace(Optional<JointAxis> mirror, int quarterTurns, Vector at) {

  /**
   * @throws IllegalArgumentException if it is turned by other than 0 to 3 quarters
   */
  public BracketPlace {
    if (quarterTurns < 0 || quarterTurns > 3) {
      throw new IllegalArgumentException("A bracket is turned by 0 to 3 quarters.");
    }
  }

  /** The bracket's face where it then is, under another name. */
  public JointFace placed(JointFace face, String name) {
    return new FaceTurn(this, face).turned(name);
  }

  /** An arrow of the bracket as described, mirrored and turned, not shifted. */
  Vector turned(Vector arrow) {
    Vector own =
        mirror
            .map(axis -> arrow.minus(axis.direction().times(2 * arrow.dot(axis.direction()))))
            .orElse(arrow);
    for (int i = 0; i < quarterTurns; i++) {
      own = new Vector(own.x(), -own.z(), own.y());
    }
    return own;
  }
}
