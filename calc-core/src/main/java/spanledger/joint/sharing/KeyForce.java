package spanledger.joint.sharing;

/**
 * What the member puts on one key, at its two bearing points.
 *
 * @param key the key
 * @param first force across the slot at the bearing point towards the slot's start, N; positive
 *     towards the left of the slot's direction
 * @param second the same at the point towards the slot's end, N
 * @param shearY share of the shear along +y, N
 * @param shearZ share of the shear along +z, N
 * @param twist share of the torsion about the key's own middle, N·mm
 */
public record KeyForce(
    KeyPlace key, double first, double second, double shearY, double shearZ, double twist) {

  /** Which flanks a key bears on. */
  public enum Bearing {
    NOTHING("bears on nothing"),
    LEFT("bears on the left flank"),
    RIGHT("bears on the right flank"),
    BOTH("is jammed between both flanks");

    private final String words;

    Bearing(String words) {
      this.words = words;
    }

    /** In plain English; left and right seen along the slot's direction, from the member. */
    public String words() {
      return words;
    }
  }

  /** Which flanks it bears on. */
  public Bearing bearing() {
    boolean left = first > 0 || second > 0;
    boolean right = first < 0 || second < 0;
    if (left && right) {
      return Bearing.BOTH;
    }
    return left ? Bearing.LEFT : right ? Bearing.RIGHT : Bearing.NOTHING;
  }

  /** Sum of the sizes of both bearing forces, N. */
  public double bearingForce() {
    return Math.abs(first) + Math.abs(second);
  }

  /** The greater of both bearing forces, N; it presses on half of the key. */
  public double greatestOnHalf() {
    return Math.max(Math.abs(first), Math.abs(second));
  }
}
