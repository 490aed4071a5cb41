package spanledger.joint.sharing;

/**
 * By what the springs of all faces are divided, because nobody knows them exactly: only how stiff
 * they are beside each other counts for sharing.
 *
 * @param inFace of bolts in shear and of keys; 1 or more
 * @param offFace of bolts in tension and of the bed; 1 or more
 */
public record Softening(double inFace, double offFace) {

  /** As they are worked out. */
  public static final Softening NONE = new Softening(1, 1);

  /**
   * @throws IllegalArgumentException if one is below 1
   */
  public Softening {
    if (!(inFace >= 1) || !(offFace >= 1)) {
      throw new IllegalArgumentException("Springs are softened by 1 or more.");
    }
  }
}
