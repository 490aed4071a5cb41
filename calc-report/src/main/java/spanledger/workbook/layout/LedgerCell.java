package spanledger.workbook.layout;

/** What stands in one cell of a table or list. */
public sealed interface LedgerCell {

  /** Nothing. */
  record Blank() implements LedgerCell {}

  /** Words; never taken for a formula. */
  record Text(String words) implements LedgerCell {}

  /**
   * Words that a formula gives.
   *
   * @param formula without the equals sign
   * @param words its result
   */
  record LiveText(String formula, String words) implements LedgerCell {}

  /**
   * Words that lead to the top of another sheet.
   *
   * @param sheet its name
   */
  record Link(String words, String sheet) implements LedgerCell {}

  /** A number that is given; its source stands beside it or above it. */
  record Given(double value) implements LedgerCell {}

  /** A counter. */
  record Count(int value) implements LedgerCell {}

  /** A number found by the solver; residuals prove it. */
  record Solved(double value) implements LedgerCell {}

  /**
   * A number that a formula gives.
   *
   * @param formula without the equals sign
   * @param value its result
   */
  record Live(String formula, double value) implements LedgerCell {}

  /** The number of another cell. */
  record Linked(NumberAt target) implements LedgerCell {}

  /** What an equation leaves over: zero but for rounding. */
  record Residual(String formula, double value) implements LedgerCell {}

  /** A judgement that no formula in the workbook gives. */
  record Judged(Outcome outcome) implements LedgerCell {}

  /** A judgement that a formula gives; see {@link Outcome#formula}. */
  record LiveJudged(String formula, Outcome outcome) implements LedgerCell {}

  static LedgerCell blank() {
    return new Blank();
  }

  static LedgerCell text(String words) {
    return words.isEmpty() ? new Blank() : new Text(words);
  }

  static LedgerCell given(double value) {
    return new Given(value);
  }

  static LedgerCell count(int value) {
    return new Count(value);
  }

  static LedgerCell solved(double value) {
    return new Solved(value);
  }

  static LedgerCell live(String formula, double value) {
    return new Live(formula, value);
  }

  static LedgerCell linked(NumberAt target) {
    return new Linked(target);
  }

  static LedgerCell residual(String formula, double value) {
    return new Residual(formula, value);
  }

  static LedgerCell judged(Outcome outcome) {
    return new Judged(outcome);
  }

  static LedgerCell judged(String condition, boolean holds, Outcome whenTrue, Outcome whenFalse) {
    return new LiveJudged(
        Outcome.formula(condition, whenTrue, whenFalse), holds ? whenTrue : whenFalse);
  }
}
