package spanledger.procedure;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes a formula in some notation, with brackets only where that notation needs them.
 *
 * <p>A negation is bracketed wherever it is part of something else, and so is its operand unless
 * atomic: spreadsheets read {@code -a^2} as {@code (-a)^2}, mathematics as {@code -(a^2)}.
 */
abstract class FormulaWriter {

  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int POWER = 3;
  private static final int ATOM = 4;

  abstract String constant(Expression.Constant constant);

  abstract String pi();

  abstract String reference(Reference reference);

  abstract String times();

  abstract String function(MathFunction function, List<String> arguments);

  abstract String extreme(boolean largest, List<String> operands);

  abstract String choice(String condition, String whenTrue, String whenFalse);

  abstract String interpolation(Interpolation table, String argument);

  abstract String relation(Condition.Relation relation);

  abstract String both(String first, String second);

  abstract String either(String first, String second);

  abstract String not(String operand);

  final String write(Expression expression) {
    return expression instanceof Expression.Negation e
        ? "-" + bracketed(e.operand(), ATOM)
        : bracketed(expression, 0);
  }

  private String bracketed(Expression expression, int needed) {
    String text = plain(expression);
    return binding(expression, text) < needed ? "(" + text + ")" : text;
  }

  private static int binding(Expression expression, String text) {
    if (expression instanceof Expression.Sum || expression instanceof Expression.Difference) {
      return SUM;
    } else if (expression instanceof Expression.Product
        || expression instanceof Expression.Quotient) {
      return PRODUCT;
    } else if (expression instanceof Expression.Power) {
      return POWER;
    }
    // Negations bracket themselves; a negative number must not run into an operator.
    return text.startsWith("-") ? 0 : ATOM;
  }

  private String plain(Expression expression) {
    if (expression instanceof Expression.Constant e) {
      return constant(e);
    } else if (expression instanceof Expression.Pi) {
      return pi();
    } else if (expression instanceof Reference e) {
      return reference(e);
    } else if (expression instanceof Expression.Negation e) {
      return "(-" + bracketed(e.operand(), ATOM) + ")";
    } else if (expression instanceof Expression.Sum e) {
      return bracketed(e.left(), SUM) + "+" + bracketed(e.right(), SUM + 1);
    } else if (expression instanceof Expression.Difference e) {
      return bracketed(e.left(), SUM) + "-" + bracketed(e.right(), SUM + 1);
    } else if (expression instanceof Expression.Product e) {
      return bracketed(e.left(), PRODUCT) + times() + bracketed(e.right(), PRODUCT + 1);
    } else if (expression instanceof Expression.Quotient e) {
      return bracketed(e.left(), PRODUCT) + "/" + bracketed(e.right(), PRODUCT + 1);
    } else if (expression instanceof Expression.Power e) {
      return bracketed(e.base(), ATOM) + "^" + bracketed(e.exponent(), ATOM);
    } else if (expression instanceof Expression.Call e) {
      return function(e.function(), all(e.arguments()));
    } else if (expression instanceof Expression.Extreme e) {
      return extreme(e.largest(), all(e.operands()));
    } else if (expression instanceof Expression.Choice e) {
      return choice(write(e.condition()), write(e.whenTrue()), write(e.whenFalse()));
    } else if (expression instanceof Interpolation e) {
      return interpolation(e, bracketed(e.argument(), ATOM));
    }
    throw new IllegalStateException("Unknown formula " + expression);
  }

  private List<String> all(List<Expression> expressions) {
    List<String> texts = new ArrayList<>();
    for (Expression expression : expressions) {
      texts.add(write(expression));
    }
    return texts;
  }

  final String write(Condition condition) {
    if (condition instanceof Condition.Comparison c) {
      return bracketed(c.left(), SUM) + relation(c.relation()) + bracketed(c.right(), SUM);
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
