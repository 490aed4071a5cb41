package spanledger.joint;

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
}
