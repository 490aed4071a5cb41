package spanledger.action;

/** With which combinations notional sway acts. */
public enum SwayScope {
  /** With those of vertical loads alone that ask for it: permanent loads and area loads. */
  VERTICAL("with combinations of permanent and area loads"),
  /**
   * With every combination for strength and stability: beside guardrail loads, wind, line loads and
   * loads that move, too.
   */
  EVERY("with every combination for strength and stability");

  private final String words;

  SwayScope(String words) {
    this.words = words;
  }

  /** The choice in words. */
  public String words() {
    return words;
  }
}
