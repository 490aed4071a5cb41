package spanledger.procedure;

import java.util.List;
import spanledger.procedure.Condition.Comparison;
import spanledger.procedure.Condition.Relation;
import spanledger.quantity.Dimension;

/** The words in which procedures write their formulas. */
public final class Formulas {

  private Formulas() {}

  /** A pure number. */
  public static Expression number(double value) {
    return new Expression.Constant(value, Dimension.NONE);
  }

  /** A number in core units of the given dimension. */
  public static Expression constant(double value, Dimension dimension) {
    return new Expression.Constant(value, dimension);
  }

  /** The circle constant. */
  public static Expression pi() {
    return new Expression.Pi();
  }

  public static Expression sqrt(Expression x) {
    return call(MathFunction.SQRT, x);
  }

  public static Expression abs(Expression x) {
    return call(MathFunction.ABS, x);
  }

  public static Expression sin(Expression x) {
    return call(MathFunction.SIN, x);
  }

  public static Expression cos(Expression x) {
    return call(MathFunction.COS, x);
  }

  public static Expression tan(Expression x) {
    return call(MathFunction.TAN, x);
  }

  public static Expression atan(Expression x) {
    return call(MathFunction.ATAN, x);
  }

  /** The angle of the vector (x, y) from the x axis, in rad, between -π and π. */
  public static Expression angleOf(Expression x, Expression y) {
    return new Expression.Call(MathFunction.ATAN2, List.of(x, y));
  }

  public static Expression exp(Expression x) {
    return call(MathFunction.EXP, x);
  }

  public static Expression ln(Expression x) {
    return call(MathFunction.LN, x);
  }

  public static Expression tanh(Expression x) {
    return call(MathFunction.TANH, x);
  }

  public static Expression min(Expression... operands) {
    return new Expression.Extreme(false, List.of(operands));
  }

  public static Expression max(Expression... operands) {
    return new Expression.Extreme(true, List.of(operands));
  }

  /** {@code whenTrue} if the condition holds, else {@code whenFalse}. */
  public static Expression choose(Condition condition, Expression whenTrue, Expression whenFalse) {
    return new Expression.Choice(condition, whenTrue, whenFalse);
  }

  public static Condition less(Expression left, Expression right) {
    return new Comparison(left, Relation.LESS, right);
  }

  public static Condition atMost(Expression left, Expression right) {
    return new Comparison(left, Relation.LESS_OR_EQUAL, right);
  }

  public static Condition greater(Expression left, Expression right) {
    return new Comparison(left, Relation.GREATER, right);
  }

  public static Condition atLeast(Expression left, Expression right) {
    return new Comparison(left, Relation.GREATER_OR_EQUAL, right);
  }

  public static Condition not(Condition operand) {
    return new Condition.Not(operand);
  }

  private static Expression call(MathFunction function, Expression argument) {
    return new Expression.Call(function, List.of(argument));
  }
}
