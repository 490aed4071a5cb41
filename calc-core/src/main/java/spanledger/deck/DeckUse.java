package spanledger.deck;

/**
 * Where a panel is used.
 *
 * @param subject the deck, floor or treads, for example {@code floor1/deck}
 * @param panel what it is
 * @param kind whether it is a floor or treads
 * @param span the greatest between neighbouring lines of support, mm
 * @param where that span is
 * @param overhang the greatest beyond an outermost line, mm
 * @param finishes weight of decking and finishes, MPa (N/mm²)
 * @param going level distance from nosing to nosing of treads, mm; 0 for floors
 */
public record DeckUse(
    String subject,
    Panel panel,
    Kind kind,
    double span,
    String where,
    double overhang,
    double finishes,
    double going) {

  /** What is walked on. */
  public enum Kind {
    FLOOR,
    TREADS
  }
}
