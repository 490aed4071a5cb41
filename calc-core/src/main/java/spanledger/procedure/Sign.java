package spanledger.procedure;

/** What a formula's form alone says about the sign of its value. */
final class Sign {

  private Sign() {}

  /** Whether the value, if there is one, cannot be below zero. */
  static boolean neverNegative(Expression expression) {
    if (expression instanceof Expression.Constant e) {
      return e.value() >= 0;
    } else if (expression instanceof Expression.Sum e) {
      return neverNegative(e.left()) && neverNegative(e.right());
    } else if (expression instanceof Expression.Product e) {
      return neverNegative(e.left()) && neverNegative(e.right());
    } else if (expression instanceof Expression.Quotient e) {
      return neverNegative(e.left()) && neverNegative(e.right());
    } else if (expression instanceof Expression.Power e) {
      return (e.exponent() instanceof Expression.Constant fixed && fixed.value() % 2 == 0)
          || neverNegative(e.base());
    } else if (expression instanceof Expression.Call e) {
      return switch (e.function()) {
        case SQRT, ABS, EXP -> true;
        case ATAN, TANH -> neverNegative(e.arguments().get(0));
        case SIN, COS, TAN, ATAN2, LN -> false;
      };
    } else if (expression instanceof Expression.Extreme e) {
      return e.largest()
          ? e.operands().stream().anyMatch(Sign::neverNegative)
          : e.operands().stream().allMatch(Sign::neverNegative);
    } else if (expression instanceof Expression.Choice e) {
      return neverNegative(e.whenTrue()) && neverNegative(e.whenFalse());
    } else if (expression instanceof Interpolation e) {
      return e.rows().stream().allMatch(row -> row.value() >= 0);
    }
    return alwaysPositive(expression);
  }

  /** Whether the value, if there is one, is certainly above zero, even if it is very small. */
  static boolean alwaysPositive(Expression expression) {
    if (expression instanceof Expression.Constant e) {
      return e.value() > 0;
    } else if (expression instanceof Expression.Extreme e) {
      return e.largest()
          ? e.operands().stream().anyMatch(Sign::alwaysPositive)
          : e.operands().stream().allMatch(Sign::alwaysPositive);
    }
    return expression instanceof Expression.Pi;
  }
}
