package spanledger.procedure;

import java.util.List;
import spanledger.quantity.Dimension;

/**
 * A formula over inputs and earlier steps of a {@link Procedure}.
 *
 * <p>The family is closed so that evaluation, spreadsheet writing and printing each cover all of
 * it. Every expression knows its dimension; building one whose parts do not fit fails at once with
 * {@link DimensionMismatchException}. Build expressions with the methods here and those of {@link
 * Formulas}.
 */
public sealed interface Expression
    permits Expression.Constant,
        Expression.Pi,
        Reference,
        Expression.Negation,
        Expression.Sum,
        Expression.Difference,
        Expression.Product,
        Expression.Quotient,
        Expression.Power,
        Expression.Call,
        Expression.Extreme,
        Expression.Choice,
        Interpolation {

  /** The dimension of the value. */
  Dimension dimension();

  /** {@code this + other}. */
  default Expression plus(Expression other) {
    return new Sum(this, other);
  }

  /** {@code this - other}. */
  default Expression minus(Expression other) {
    return new Difference(this, other);
  }

  /** {@code this · other}. */
  default Expression times(Expression other) {
    return new Product(this, other);
  }

  /** {@code factor · this}. */
  default Expression times(double factor) {
    return new Product(Formulas.number(factor), this);
  }

  /** {@code this / other}. */
  default Expression over(Expression other) {
    return new Quotient(this, other);
  }

  /** {@code this / divisor}. */
  default Expression over(double divisor) {
    return new Quotient(this, Formulas.number(divisor));
  }

  /** {@code -this}. */
  default Expression negated() {
    return new Negation(this);
  }

  /** {@code this} raised to a fixed power. */
  default Expression pow(double exponent) {
    return exponent == 1 ? this : new Power(this, Formulas.number(exponent));
  }

  /** {@code this} raised to a variable, dimensionless power; {@code this} must be a pure number. */
  default Expression pow(Expression exponent) {
    return new Power(this, exponent);
  }

  /**
   * A literal number.
   *
   * @param value zero or between 1E-300 and 1E300 in size, and with at most 15 significant digits:
   *     a spreadsheet keeps no more
   */
  record Constant(double value, Dimension dimension) implements Expression {
    public Constant {
      SpreadsheetNumber.require("A constant", value);
    }
  }

  /** The circle constant. */
  record Pi() implements Expression {
    @Override
    public Dimension dimension() {
      return Dimension.NONE;
    }
  }

  /** The operand with its sign changed. */
  record Negation(Expression operand) implements Expression {
    @Override
    public Dimension dimension() {
      return operand.dimension();
    }
  }

  /** Addition of like quantities. */
  record Sum(Expression left, Expression right) implements Expression {
    public Sum {
      DimensionMismatchException.requireAlike("add", left, right);
    }

    @Override
    public Dimension dimension() {
      return left.dimension();
    }
  }

  /** Subtraction of like quantities. */
  record Difference(Expression left, Expression right) implements Expression {
    public Difference {
      DimensionMismatchException.requireAlike("subtract", left, right);
    }

    @Override
    public Dimension dimension() {
      return left.dimension();
    }
  }

  /** Multiplication. */
  record Product(Expression left, Expression right) implements Expression {
    @Override
    public Dimension dimension() {
      return left.dimension().times(right.dimension());
    }
  }

  /** Division; the divisor must not become zero inside the procedure's domain. */
  record Quotient(Expression left, Expression right) implements Expression {
    @Override
    public Dimension dimension() {
      return left.dimension().per(right.dimension());
    }
  }

  /**
   * A power. A negative base is only in the domain when the exponent is a whole constant; zero to
   * the power zero, or to a negative power, is never in the domain.
   */
  record Power(Expression base, Expression exponent) implements Expression {
    public Power {
      DimensionMismatchException.requireNumber("an exponent", exponent);
      if (exponent instanceof Constant fixed) {
        if (fixed.value() == 0) {
          throw new IllegalArgumentException(
              SymbolicText.of(base) + " cannot be raised to the power zero; write the number 1.");
        }
        base.dimension().power(fixed.value());
      } else {
        DimensionMismatchException.requireNumber("the base of a variable power", base);
      }
    }

    @Override
    public Dimension dimension() {
      return exponent instanceof Constant fixed
          ? base.dimension().power(fixed.value())
          : Dimension.NONE;
    }
  }

  /** A function of one or two arguments. */
  record Call(MathFunction function, List<Expression> arguments) implements Expression {
    public Call {
      arguments = List.copyOf(arguments);
      function.requireFitting(arguments);
    }

    @Override
    public Dimension dimension() {
      return function.dimensionOf(arguments);
    }
  }

  /** The largest or smallest of like quantities. */
  record Extreme(boolean largest, List<Expression> operands) implements Expression {
    public Extreme {
      operands = List.copyOf(operands);
      if (operands.size() < 2) {
        throw new IllegalArgumentException("min and max need at least two operands.");
      }
      for (Expression operand : operands) {
        DimensionMismatchException.requireAlike("compare", operands.get(0), operand);
      }
    }

    @Override
    public Dimension dimension() {
      return operands.get(0).dimension();
    }
  }

  /** One of two like quantities by a condition; the branch not taken need not be in its domain. */
  record Choice(Condition condition, Expression whenTrue, Expression whenFalse)
      implements Expression {
    public Choice {
      DimensionMismatchException.requireAlike("choose between", whenTrue, whenFalse);
    }

    @Override
    public Dimension dimension() {
      return whenTrue.dimension();
    }
  }
}
