package spanledger.procedure;

import java.util.List;

/**
 * Writes a formula in some notation, with brackets only where that notation needs them.
 *
 * <p>A negation is bracketed wherever it meets an operator, and so is its operand unless atomic:
 * spreadsheets read {@code -a^2} as {@code (-a)^2}, mathematics as {@code -(a^2)}.
 */
abstract class FormulaWriter {

  static final int LOOSEST = 0;
  static final int SUM = 1;
  static final int PRODUCT = 2;
  static final int POWER = 3;
  static final int ATOM = 4;

  /**
   * A written part.
   *
   * @param binding how tightly the part holds together, from {@link #LOOSEST} to {@link #ATOM}
   */
  record Part(String text, int binding) {

    /** A number, symbol or call; a negative number must not run into an operator. */
    static Part atom(String text) {
      return new Part(text, text.startsWith("-") ? LOOSEST : ATOM);
    }

    /** The text for a place that needs parts to hold together at least so tightly. */
    String in(int needed) {
      return binding < needed ? "(" + text + ")" : text;
    }
  }

  abstract Part constant(Expression.Constant constant);

  abstract String pi();

  abstract String reference(Reference reference);

  abstract String times();

  abstract Part call(MathFunction function, List<Part> arguments);

  abstract String extreme(boolean largest, List<String> operands);

  abstract String choice(String condition, String whenTrue, String whenFalse);

  abstract String interpolation(Interpolation table, Part argument);

  abstract String relation(Condition.Relation relation);

  abstract String both(String first, String second);

  abstract String either(String first, String second);

  abstract String not(String operand);

  Part power(Expression.Power power, Part base, Part exponent) {
    return new Part(base.in(ATOM) + "^" + exponent.in(ATOM), POWER);
  }

  final String write(Expression expression) {
    return part(expression).text();
  }

  private Part part(Expression expression) {
    if (expression instanceof Expression.Constant e) {
      return constant(e);
    } else if (expression instanceof Expression.Pi) {
      return Part.atom(pi());
    } else if (expression instanceof Reference e) {
      return Part.atom(reference(e));
    } else if (expression instanceof Expression.Negation e) {
      return new Part("-" + part(e.operand()).in(ATOM), LOOSEST);
    } else if (expression instanceof Expression.Sum e) {
      return binary(SUM, e.left(), "+", e.right());
    } else if (expression instanceof Expression.Difference e) {
      return binary(SUM, e.left(), "-", e.right());
    } else if (expression instanceof Expression.Product e) {
      return binary(PRODUCT, e.left(), times(), e.right());
    } else if (expression instanceof Expression.Quotient e) {
      return binary(PRODUCT, e.left(), "/", e.right());
    } else if (expression instanceof Expression.Power e) {
      return power(e, part(e.base()), part(e.exponent()));
    } else if (expression instanceof Expression.Call e) {
      return call(e.function(), e.arguments().stream().map(this::part).toList());
    } else if (expression instanceof Expression.Extreme e) {
      return Part.atom(extreme(e.largest(), e.operands().stream().map(this::write).toList()));
    } else if (expression instanceof Expression.Choice e) {
      return Part.atom(choice(write(e.condition()), write(e.whenTrue()), write(e.whenFalse())));
    } else if (expression instanceof Interpolation e) {
      return Part.atom(interpolation(e, part(e.argument())));
    }
    throw new IllegalStateException("Unknown formula " + expression);
  }

  /** The right part binds tighter than the operator, so {@code a-(b-c)} keeps its brackets. */
  private Part binary(int operator, Expression left, String sign, Expression right) {
    return new Part(part(left).in(operator) + sign + part(right).in(operator + 1), operator);
  }

  final String write(Condition condition) {
    if (condition instanceof Condition.Comparison c) {
      return part(c.left()).in(SUM) + relation(c.relation()) + part(c.right()).in(SUM);
    } else if (condition instanceof Condition.Both c) {
      return both(write(c.first()), write(c.second()));
    } else if (condition instanceof Condition.Either c) {
      return either(write(c.first()), write(c.second()));
    } else if (condition instanceof Condition.Not c) {
      return not(write(c.operand()));
    }
    throw new IllegalStateException("Unknown condition " + condition);
  }
}
