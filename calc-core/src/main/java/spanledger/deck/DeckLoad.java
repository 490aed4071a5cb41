package spanledger.deck;

/** How a deck or tread is loaded, apart from its weight; one at a time. */
public enum DeckLoad {
  AREA("load on all of it"),
  POINT("load at one place"),
  LINE("line load along it");

  private final String words;

  DeckLoad(String words) {
    this.words = words;
  }

  /** The load in words. */
  public String words() {
    return words;
  }
}
