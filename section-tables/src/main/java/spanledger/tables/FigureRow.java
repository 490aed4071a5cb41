package spanledger.tables;

import spanledger.action.Figure;
import spanledger.quantity.Dimension;

/** Reads one figure of a rule set or combination set. */
final class FigureRow {

  private FigureRow() {}

  /** The figure of a row with id, words, value, source and note. */
  static Figure read(TableObject row, Dimension dimension) {
    double value = row.quantity("value", dimension);
    if (value < 0) {
      throw row.fault("\"value\" is negative; a figure must be 0 or more.");
    }
    return new Figure(
        row.text("id"),
        row.text("words"),
        row.text("value"),
        value,
        dimension,
        row.source(),
        row.optionalText("note").orElse(""));
  }
}
