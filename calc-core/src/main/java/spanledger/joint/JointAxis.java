package spanledger.joint;

import spanledger.frame.Vector;

/**
 * The axes of a joint at a member end: u from the joint into the member, w along the member's z, v
 * completing a right-handed set. At a member's start they are its x, y, z; at its end -x, -y, z.
 */
public enum JointAxis {
  U,
  V,
  W;

  /** The axis that follows in the order u, v, w, u. */
  public JointAxis next() {
    return values()[(ordinal() + 1) % values().length];
  }

  /** The letter of the axis. */
  public String letter() {
    return switch (this) {
      case U -> "u";
      case V -> "v";
      case W -> "w";
    };
  }

  /** The unit arrow along it, with components along u, v, w. */
  public Vector direction() {
    return switch (this) {
      case U -> new Vector(1, 0, 0);
      case V -> new Vector(0, 1, 0);
      case W -> new Vector(0, 0, 1);
    };
  }
}
