package spanledger.workbook.layout;

import spanledger.provenance.Source;

/** Where one input of one row of a {@link ProcedureTable} comes from. */
public sealed interface InputCell {

  /** Whether a linked input has a column of its own. */
  enum Showing {
    /** It has a column. */
    SHOWN,
    /**
     * The formulas of the steps refer to the other cell directly. All rows must then be inline;
     * over the rows the cell may stay the same or move down one column, as a table's row does.
     */
    INLINE
  }

  /** The value, in core units. */
  double value();

  /** A given number; its source is shown in the header or, if rows differ, at the row's end. */
  record Literal(double value, Source source) implements InputCell {}

  /**
   * A number found by the solver.
   *
   * @param proof where residuals prove it
   */
  record Solved(double value, String proof) implements InputCell {}

  /** The number of another cell. */
  record Linked(NumberAt target, Showing showing) implements InputCell {
    @Override
    public double value() {
      return target.value();
    }
  }

  /**
   * A formula.
   *
   * @param formula without the equals sign
   * @param value its result
   * @param note what it does, for the header
   */
  record Live(String formula, double value, String note) implements InputCell {}

  /**
   * The number of an earlier row of the same table.
   *
   * @param row which one, from 0
   * @param symbol of an input with a column, or of a step
   * @param value its value there
   */
  record EarlierRow(int row, String symbol, double value) implements InputCell {}

  static InputCell literal(double value, Source source) {
    return new Literal(value, source);
  }

  static InputCell solved(double value, String proof) {
    return new Solved(value, proof);
  }

  static InputCell shown(NumberAt target) {
    return new Linked(target, Showing.SHOWN);
  }

  static InputCell inline(NumberAt target) {
    return new Linked(target, Showing.INLINE);
  }

  static InputCell live(String formula, double value, String note) {
    return new Live(formula, value, note);
  }

  static InputCell earlierRow(int row, String symbol, double value) {
    return new EarlierRow(row, symbol, value);
  }

  /** Whether it is used in place, without a column. */
  default boolean isInline() {
    return this instanceof Linked linked && linked.showing() == Showing.INLINE;
  }
}
