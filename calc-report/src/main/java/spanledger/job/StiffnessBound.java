package spanledger.job;

/** Which end of a given range of stiffness springs are taken with. */
public enum StiffnessBound {
  LOWER("lower"),
  UPPER("upper");

  private final String words;

  StiffnessBound(String words) {
    this.words = words;
  }

  /** The bound in words. */
  public String words() {
    return words;
  }
}
