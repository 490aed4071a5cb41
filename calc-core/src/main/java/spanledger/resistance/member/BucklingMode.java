package spanledger.resistance.member;

/** The ways in which a member as a whole may buckle. */
public enum BucklingMode {
  /** Bending about y, moving along z. */
  FLEXURAL_Y("flexural buckling about y"),
  /** Bending about z, moving along y. */
  FLEXURAL_Z("flexural buckling about z"),
  /** Twisting, between points that cannot twist. */
  TORSIONAL("torsional buckling"),
  /** Between lateral restraints of the compressed flange. */
  LATERAL_TORSIONAL("lateral-torsional buckling");

  private final String words;

  BucklingMode(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
