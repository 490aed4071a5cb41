package spanledger.job.problem;

/** How grave a problem is. */
public enum Severity {
  /** The job cannot be calculated. */
  ERROR("error"),
  /** The job can be calculated, but its author should look again. */
  WARNING("warning");

  private final String words;

  Severity(String words) {
    this.words = words;
  }

  /** The severity in words. */
  public String words() {
    return words;
  }
}
