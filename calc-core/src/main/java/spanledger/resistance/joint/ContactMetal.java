package spanledger.resistance.joint;

/** Metals that touch in joints, as far as corrosion at their contact goes. */
public enum ContactMetal {
  ALUMINIUM("aluminium"),
  STAINLESS_STEEL("austenitic stainless steel"),
  ZINC_COATED_STEEL("zinc-coated steel"),
  BARE_STEEL("bare steel"),
  COPPER_ALLOY("copper and its alloys");

  private final String words;

  ContactMetal(String words) {
    this.words = words;
  }

  /** Its name in words. */
  public String words() {
    return words;
  }
}
