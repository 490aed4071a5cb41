package spanledger.resistance.joint;

/** What surrounds a joint, as far as corrosion goes. */
public enum Surroundings {
  DRY_INDOOR("dry, indoors"),
  WET_INDOOR("wet indoors, or washed down"),
  OUTDOOR("outdoors, away from the sea and from industry"),
  MARINE("near the sea, or in industrial air");

  private final String words;

  Surroundings(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
