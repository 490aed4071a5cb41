package spanledger.procedure;

import java.util.LinkedHashSet;
import java.util.Set;

/** Finds the symbols a formula uses. */
public final class References {

  private References() {}

  /** The references in the formula, in order of first use. */
  public static Set<Reference> of(Expression expression) {
    Set<Reference> found = new LinkedHashSet<>();
    collect(expression, found);
    return found;
  }

  private static void collect(Expression expression, Set<Reference> found) {
    if (expression instanceof Reference reference) {
      found.add(reference);
    } else if (expression instanceof Expression.Negation e) {
      collect(e.operand(), found);
    } else if (expression instanceof Expression.Sum e) {
      collect(e.left(), found);
      collect(e.right(), found);
    } else if (expression instanceof Expression.Difference e) {
      collect(e.left(), found);
      collect(e.right(), found);
    } else if (expression instanceof Expression.Product e) {
      collect(e.left(), found);
      collect(e.right(), found);
    } else if (expression instanceof Expression.Quotient e) {
      collect(e.left(), found);
      collect(e.right(), found);
    } else if (expression instanceof Expression.Power e) {
      collect(e.base(), found);
      collect(e.exponent(), found);
    } else if (expression instanceof Expression.Call e) {
      e.arguments().forEach(argument -> collect(argument, found));
    } else if (expression instanceof Expression.Extreme e) {
      e.operands().forEach(operand -> collect(operand, found));
    } else if (expression instanceof Expression.Choice e) {
      collect(e.condition(), found);
      collect(e.whenTrue(), found);
      collect(e.whenFalse(), found);
    } else if (expression instanceof Interpolation e) {
      collect(e.argument(), found);
    }
  }

  private static void collect(Condition condition, Set<Reference> found) {
    if (condition instanceof Condition.Comparison c) {
      collect(c.left(), found);
      collect(c.right(), found);
    } else if (condition instanceof Condition.Both c) {
      collect(c.first(), found);
      collect(c.second(), found);
    } else if (condition instanceof Condition.Either c) {
      collect(c.first(), found);
      collect(c.second(), found);
    } else if (condition instanceof Condition.Not c) {
      collect(c.operand(), found);
    }
  }
}
