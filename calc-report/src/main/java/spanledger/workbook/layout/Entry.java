package spanledger.workbook.layout;

import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * One line of an {@link EntryList}.
 *
 * @param words what it is
 * @param symbol its symbol; may be empty
 * @param cell its value
 * @param unit of the value; may be empty
 * @param dimension of the value; decides how it is shown
 * @param source where a given value comes from
 */
public record Entry(
    String words,
    String symbol,
    LedgerCell cell,
    String unit,
    Dimension dimension,
    Optional<Source> source) {

  public Entry {
    if (cell instanceof LedgerCell.Given && source.isEmpty()) {
      throw new IllegalArgumentException("The given number \"" + words + "\" needs a source.");
    }
  }

  /** Words. */
  public static Entry text(String words, String value) {
    return new Entry(words, "", LedgerCell.text(value), "", Dimension.NONE, Optional.empty());
  }

  /** A given number. */
  public static Entry given(
      String words, String symbol, double value, Dimension dimension, Source source) {
    return new Entry(
        words,
        symbol,
        new LedgerCell.Given(value),
        dimension.coreUnit(),
        dimension,
        Optional.of(source));
  }

  /** A number that a formula, a link or the solver gives. */
  public static Entry number(String words, String symbol, LedgerCell cell, Dimension dimension) {
    return new Entry(words, symbol, cell, dimension.coreUnit(), dimension, Optional.empty());
  }

  /** The same line with another unit text, for example rad. */
  public Entry withUnit(String other) {
    return new Entry(words, symbol, cell, other, dimension, source);
  }

  /** The same line with a source. */
  public Entry withSource(Source from) {
    return new Entry(words, symbol, cell, unit, dimension, Optional.of(from));
  }
}
