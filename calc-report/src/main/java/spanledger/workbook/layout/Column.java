package spanledger.workbook.layout;

import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A column of a {@link DataTable}.
 *
 * @param heading its symbol or name, unique in the table
 * @param words what it means; may be empty
 * @param unit the unit of its numbers; may be empty
 * @param dimension of its numbers; decides how they are shown
 * @param content whether it holds numbers or words
 * @param width in characters
 * @param source where the column's given numbers come from, if from one place
 */
public record Column(
    String heading,
    String words,
    String unit,
    Dimension dimension,
    Content content,
    int width,
    Optional<Source> source) {

  /** What a column holds. */
  public enum Content {
    /** Words on one line. */
    TEXT,
    /** Words that may need several lines. */
    WRAPPED,
    /** Numbers of one quantity, shown alike. */
    NUMBER,
    /** Numbers of several quantities, each shown as it was given. */
    MIXED
  }

  private static final int NUMBER_WIDTH = 12;

  /** Words on one line. */
  public static Column text(String heading, int width) {
    return new Column(heading, "", "", Dimension.NONE, Content.TEXT, width, Optional.empty());
  }

  /** Words that may need several lines. */
  public static Column wrapped(String heading, int width) {
    return new Column(heading, "", "", Dimension.NONE, Content.WRAPPED, width, Optional.empty());
  }

  /** Numbers in the core unit of their dimension. */
  public static Column number(String heading, String words, Dimension dimension) {
    return new Column(
        heading,
        words,
        dimension.coreUnit(),
        dimension,
        Content.NUMBER,
        NUMBER_WIDTH,
        Optional.empty());
  }

  /** Numbers of several quantities, with their units in a column of their own. */
  public static Column mixed(String heading, String words) {
    return new Column(
        heading, words, "", Dimension.NONE, Content.MIXED, NUMBER_WIDTH, Optional.empty());
  }

  /** The same column with another unit text, for example rad. */
  public Column withUnit(String other) {
    return new Column(heading, words, other, dimension, content, width, source);
  }

  /** The same column, of another width. */
  public Column withWidth(int characters) {
    return new Column(heading, words, unit, dimension, content, characters, source);
  }

  /** The same column, whose given numbers come from one place. */
  public Column withSource(Source from) {
    return new Column(heading, words, unit, dimension, content, width, Optional.of(from));
  }

  /** The same column with an explanation under its heading. */
  public Column withWords(String meaning) {
    return new Column(heading, meaning, unit, dimension, content, width, source);
  }
}
