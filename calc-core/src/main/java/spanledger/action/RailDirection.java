package spanledger.action;

/** The directions in which people load a guardrail. */
public enum RailDirection {
  OUTWARD("outward"),
  INWARD("inward"),
  DOWNWARD("downward"),
  ALONG("along");

  private final String words;

  RailDirection(String words) {
    this.words = words;
  }

  /** The direction in words. */
  public String words() {
    return words;
  }
}
