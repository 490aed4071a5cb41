package spanledger.frame;

/** The six ways a node can move, in the order used by every six-vector. */
public enum Freedom {
  SHIFT_X("along X", true),
  SHIFT_Y("along Y", true),
  SHIFT_Z("along Z", true),
  TURN_X("about X", false),
  TURN_Y("about Y", false),
  TURN_Z("about Z", false);

  private final String words;
  private final boolean shift;

  Freedom(String words, boolean shift) {
    this.words = words;
    this.shift = shift;
  }

  /** For example "along X" or "about Z". */
  public String words() {
    return words;
  }

  /** Whether this is a translation (mm) and not a rotation (rad). */
  public boolean isShift() {
    return shift;
  }
}
