package spanledger.action;

/** The place of a rail in a guardrail. */
public enum RailKind {
  TOP("top rail"),
  MIDDLE("middle rail"),
  TOE("toe-board");

  private final String words;

  RailKind(String words) {
    this.words = words;
  }

  /** The kind in words. */
  public String words() {
    return words;
  }
}
