package spanledger.envelope;

/** What is looked for along members under strength combinations. */
public enum StrengthMeasure {
  BENDING("bending", "η_bending"),
  SHEAR("shear and torsion", "η_shear"),
  COMBINED("combined stress", "η_combined"),
  WALL("wall slenderness", "η_wall");

  private final String words;
  private final String symbol;

  StrengthMeasure(String words, String symbol) {
    this.words = words;
    this.symbol = symbol;
  }

  /** The measure in words. */
  public String words() {
    return words;
  }

  /** The step that gives it. */
  public String symbol() {
    return symbol;
  }
}
