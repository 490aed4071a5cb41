package spanledger.deck;

import spanledger.quantity.Dimension;

/** The columns of a capacity table. */
public enum PanelColumn {
  SPAN("L", "span"),
  UNIFORM("q", "load on all of it"),
  POINT("P", "load at one place"),
  UNIFORM_DEFLECTION("δ_q", "deflection under q"),
  POINT_DEFLECTION("δ_P", "deflection under P");

  private final String symbol;
  private final String words;

  PanelColumn(String symbol, String words) {
    this.symbol = symbol;
    this.words = words;
  }

  /** Its symbol; formulas add {@code _1} and {@code _2} for the rows before and after. */
  public String symbol() {
    return symbol;
  }

  /** What it holds. */
  public String words() {
    return words;
  }

  /** The dimension of its numbers. */
  public Dimension dimension() {
    return switch (this) {
      case SPAN, UNIFORM_DEFLECTION, POINT_DEFLECTION -> Dimension.LENGTH;
      case UNIFORM -> Dimension.STRESS;
      case POINT -> Dimension.FORCE;
    };
  }
}
