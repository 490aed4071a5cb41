package spanledger.joint;

/**
 * The direction square to a joint face, from what holds the member towards the member.
 *
 * <p>With the first and second axis of the face it makes a right-handed set.
 *
 * @param axis the axis of the joint
 * @param positive whether it points along that axis, or else against it
 */
public record FaceNormal(JointAxis axis, boolean positive) {

  /** The first axis in the face. */
  public JointAxis first() {
    return positive ? axis.next() : axis.next().next();
  }

  /** The second axis in the face. */
  public JointAxis second() {
    return positive ? axis.next().next() : axis.next();
  }

  /** 1 or -1. */
  public int sign() {
    return positive ? 1 : -1;
  }

  /** The axis with its sign, for example {@code -v}. */
  public String words() {
    return (positive ? "" : "-") + axis.letter();
  }
}
