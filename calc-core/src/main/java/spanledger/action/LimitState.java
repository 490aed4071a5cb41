package spanledger.action;

/** What a combination is for. */
public enum LimitState {
  STRENGTH("strength"),
  SERVICEABILITY("serviceability"),
  STABILITY("stability");

  private final String words;

  LimitState(String words) {
    this.words = words;
  }

  /** The limit state in words. */
  public String words() {
    return words;
  }
}
