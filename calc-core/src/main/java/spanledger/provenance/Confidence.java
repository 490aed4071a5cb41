package spanledger.provenance;

/** How far a figure or formula can be trusted without looking it up again. */
public enum Confidence {
  /** Read in the published work named. */
  PUBLISHED("published"),
  /** Recalled; must be confirmed before anyone relies on it. */
  FROM_MEMORY("from memory, confirm against the standard"),
  /** Derived here from equilibrium, geometry or elasticity; the derivation is in docs/. */
  DERIVED("derived from mechanics"),
  /** Known in the trade, without a citable source. */
  COMMON_PRACTICE("common practice, no source"),
  /** Given by the author of the job. */
  DECLARED("declared in the job"),
  /** Invented for the demonstration scenario. */
  INVENTED("invented for the demonstration");

  private final String words;

  Confidence(String words) {
    this.words = words;
  }

  /** The wording printed beside the figure. */
  public String words() {
    return words;
  }
}
