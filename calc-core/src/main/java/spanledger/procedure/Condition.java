package spanledger.procedure;

/** A statement that is true or false for given inputs; used to choose a branch. */
public sealed interface Condition {

  /**
   * The kinds of comparison. Equality is left out on purpose: engines differ in how they round
   * before it.
   */
  enum Relation {
    LESS("<"),
    LESS_OR_EQUAL("<="),
    GREATER(">"),
    GREATER_OR_EQUAL(">=");

    private final String sign;

    Relation(String sign) {
      this.sign = sign;
    }

    /** The sign as spreadsheets write it. */
    public String sign() {
      return sign;
    }
  }

  /** Compares like quantities. */
  record Comparison(Expression left, Relation relation, Expression right) implements Condition {
    public Comparison {
      DimensionMismatchException.requireAlike("compare", left, right);
    }
  }

  /** Both hold. */
  record Both(Condition first, Condition second) implements Condition {}

  /** At least one holds. */
  record Either(Condition first, Condition second) implements Condition {}

  /** The operand does not hold. */
  record Not(Condition operand) implements Condition {}

  /** Both this and the other. */
  default Condition and(Condition other) {
    return new Both(this, other);
  }

  /** This or the other. */
  default Condition or(Condition other) {
    return new Either(this, other);
  }
}
