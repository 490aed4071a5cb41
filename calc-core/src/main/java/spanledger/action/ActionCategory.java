package spanledger.action;

/** What kind of action a load case is; it decides the factors it takes in combinations. */
public enum ActionCategory {
  /** Self-weight and everything that stays. */
  PERMANENT("permanent"),
  /** People and goods on floors. */
  IMPOSED("imposed"),
  /** People leaning on guardrails. */
  GUARDRAIL("guardrail"),
  /** Level forces that stand for frames out of plumb. */
  NOTIONAL("notional sway"),
  /** Wind given by the user. */
  WIND("wind"),
  /** Anything else given by the user; treated as imposed. */
  OTHER("other");

  private final String words;

  ActionCategory(String words) {
    this.words = words;
  }

  /** The category in words. */
  public String words() {
    return words;
  }
}
