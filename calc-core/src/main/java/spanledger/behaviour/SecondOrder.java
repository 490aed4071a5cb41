package spanledger.behaviour;

/** When loads are taken to act on the displaced frame. */
public enum SecondOrder {
  /** Where the critical load factor is below the rule set's figure. */
  AUTO("where the critical load factor asks for it"),
  /** Always. */
  ALWAYS("always"),
  /** Never; where the critical load factor asks for it, results are not checked. */
  NEVER("never");

  private final String words;

  SecondOrder(String words) {
    this.words = words;
  }

  /** The choice in words. */
  public String words() {
    return words;
  }
}
