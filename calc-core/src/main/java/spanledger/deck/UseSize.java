package spanledger.deck;

import spanledger.quantity.Dimension;

/** The sizes of a use of a panel that calculations start from. */
public enum UseSize {
  SPAN("L", "greatest span"),
  WEIGHT("g", "finishes of the floor, or weight of the panel for treads"),
  GOING("b_g", "going of the flight, 0 for floors");

  private final String symbol;
  private final String words;

  UseSize(String symbol, String words) {
    this.symbol = symbol;
    this.words = words;
  }

  /** Its symbol. */
  public String symbol() {
    return symbol;
  }

  /** What it is. */
  public String words() {
    return words;
  }

  /** Its dimension. */
  public Dimension dimension() {
    return this == WEIGHT ? Dimension.STRESS : Dimension.LENGTH;
  }

  /** The size of a use, in core units. */
  public double of(DeckUse use) {
    return switch (this) {
      case SPAN -> use.span();
      case WEIGHT -> use.finishes();
      case GOING -> use.going();
    };
  }
}
