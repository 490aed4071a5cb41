package spanledger.verdict;

/** The outcome of a check. */
public enum Status {
  PASSED("pass"),
  FAILED("FAIL"),
  NOT_CHECKED("NOT CHECKED"),
  /** A force handed on to somebody else's check; neither pass nor fail. */
  DEMAND("demand");

  private final String words;

  Status(String words) {
    this.words = words;
  }

  /** The outcome in words. */
  public String words() {
    return words;
  }
}
