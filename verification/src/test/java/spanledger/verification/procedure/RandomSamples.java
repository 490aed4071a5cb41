package spanledger.verification.procedure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.IntSupplier;
import spanledger.procedure.Condition;
import spanledger.procedure.Expression;
import spanledger.procedure.Formulas;
import spanledger.procedure.Interpolation;
import spanledger.procedure.MathFunction;
import spanledger.quantity.Dimension;

/**
 * Makes formulas of every kind over inputs from 1E-30 to 1E30 out of random draws. Low draws make
 * simple formulas, so a failing sample shrinks.
 */
final class RandomSamples {

  /** Draws are from zero to below this. */
  static final int DRAWS = 1 << 20;

  /** How many inputs a formula may use. */
  static final int INPUTS = 6;

  private static final int DEPTH = 4;

  /** Some where programs disagree: the cube root of -8, to fifteen digits, is -2 in some. */
  private static final double[] EXPONENTS = {
    2, 3, 4, 5, -1, -2, -3, 0.5, 1.5, -0.5, 0.25, 0.2, 0.333333333333333, 1.7
  };

  private final IntSupplier draws;

  RandomSamples(IntSupplier draws) {
    this.draws = draws;
  }

  Sample next() {
    while (true) {
      List<Double> inputs = new ArrayList<>();
      for (int i = 0; i < INPUTS; i++) {
        inputs.add(inputValue());
      }
      Sample sample = new Sample(formula(DEPTH), List.copyOf(inputs));
      if (sample.fitsIntoACell()) {
        return sample;
      }
    }
  }

  private double inputValue() {
    int kind = below(10);
    if (kind < 2) {
      return between(-5, 5);
    }
    // Both signs, evenly over the powers of ten.
    double range = kind < 8 ? 3 : 30;
    double exponent = range * (2.0 * draws.getAsInt() / DRAWS - 1);
    return (below(3) == 2 ? -1 : 1) * Math.pow(10, exponent);
  }

  private Expression formula(int depth) {
    if (depth == 0) {
      return leaf();
    }
    int kind = below(34);
    if (kind < 4) {
      return part(depth).plus(part(depth));
    } else if (kind < 8) {
      return part(depth).minus(part(depth));
    } else if (kind < 12) {
      return part(depth).times(part(depth));
    } else if (kind < 16) {
      return part(depth).over(part(depth));
    } else if (kind < 18) {
      return part(depth).negated();
    } else if (kind < 22) {
      return power(depth);
    } else if (kind < 28) {
      return call(depth);
    } else if (kind < 30) {
      return extreme(depth);
    } else if (kind < 33) {
      return Formulas.choose(condition(depth, 2), part(depth), part(depth));
    }
    return table(depth);
  }

  private Expression part(int depth) {
    return below(5) < 2 ? leaf() : formula(depth - 1);
  }

  private Expression leaf() {
    int kind = below(12);
    if (kind < 8) {
      return Sample.input(below(INPUTS));
    } else if (kind < 11) {
      return Formulas.number(constant());
    }
    return Formulas.pi();
  }

  /** Up to fifteen digits, as many as a formula may hold. */
  private double constant() {
    if (below(5) < 2) {
      return between(-5, 5);
    }
    int length = between(1, 15);
    long digits = 0;
    for (int i = 0; i < length; i++) {
      digits = 10 * digits + below(10);
    }
    int power = below(7) < 6 ? between(-3, 2) : between(-30, 30);
    int sign = below(3) == 2 ? -1 : 1;
    return sign * BigDecimal.valueOf(digits, length - power).doubleValue() + 0.0;
  }

  private Expression power(int depth) {
    Expression base = part(depth);
    if (below(4) < 3) {
      return base.pow(EXPONENTS[below(EXPONENTS.length)]);
    }
    Expression exponent = part(depth);
    // A zero constant is no exponent.
    return base.pow(
        exponent instanceof Expression.Constant c && c.value() == 0
            ? exponent.times(Formulas.pi())
            : exponent);
  }

  private Expression call(int depth) {
    MathFunction function = MathFunction.values()[below(MathFunction.values().length)];
    return new Expression.Call(
        function,
        function == MathFunction.ATAN2 ? List.of(part(depth), part(depth)) : List.of(part(depth)));
  }

  private Expression extreme(int depth) {
    List<Expression> operands = new ArrayList<>();
    int count = between(2, 4);
    for (int i = 0; i < count; i++) {
      operands.add(part(depth));
    }
    return new Expression.Extreme(below(2) == 1, operands);
  }

  private Condition condition(int depth, int nesting) {
    int kind = nesting == 0 ? 0 : below(7);
    if (kind < 4) {
      Condition.Relation[] relations = Condition.Relation.values();
      return new Condition.Comparison(part(depth), relations[below(relations.length)], part(depth));
    } else if (kind == 4) {
      return condition(depth, nesting - 1).and(condition(depth, nesting - 1));
    } else if (kind == 5) {
      return condition(depth, nesting - 1).or(condition(depth, nesting - 1));
    }
    return Formulas.not(condition(depth, nesting - 1));
  }

  private Expression table(int depth) {
    TreeMap<Integer, Interpolation.Row> rows = new TreeMap<>();
    int count = between(1, 4);
    for (int i = 0; i < count; i++) {
      int at = between(-100_000, 100_000);
      rows.put(at, new Interpolation.Row(at / 100.0, between(-100_000, 100_000) / 10.0));
    }
    rows.putIfAbsent(-110_000, new Interpolation.Row(-1100, 0));
    rows.putIfAbsent(110_000, new Interpolation.Row(1100, -2.5));
    return new Interpolation(
        List.copyOf(rows.values()), part(depth), Dimension.NONE, Dimension.NONE);
  }

  private int between(int least, int most) {
    return least + below(most - least + 1);
  }

  private int below(int bound) {
    return (int) ((long) draws.getAsInt() * bound / DRAWS);
  }
}
