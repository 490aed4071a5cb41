package spanledger.jointdesign;

/** Ends of a member. */
public enum Ends {
  START,
  END,
  BOTH;

  /** Whether the start, or else the end, is among them. */
  public boolean has(boolean start) {
    return this == BOTH || (this == START) == start;
  }
}
