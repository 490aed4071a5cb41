package spanledger.procedure;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Turns formulas into evaluators, resolving each symbol to its place once.
 *
 * <p>Where a spreadsheet shows an error the value here is NaN, never infinite, and NaN passes
 * through everything that uses it, as errors do: {@code min(1/0; 5)} and a choice by {@code 1/0 <
 * 5} have no value.
 */
final class EvaluatorCompiler {

  /** Spreadsheets refuse to reduce larger angles. From memory, confirm. */
  private static final double LARGEST_ANGLE = 0x1p27;

  private EvaluatorCompiler() {}

  static Evaluator compile(Expression expression, Map<String, Integer> slots) {
    if (expression instanceof Expression.Constant e) {
      double value = e.value();
      return s -> value;
    } else if (expression instanceof Expression.Pi) {
      return s -> Math.PI;
    } else if (expression instanceof Reference e) {
      int slot = Objects.requireNonNull(slots.get(e.symbol()));
      return s -> s[slot];
    } else if (expression instanceof Expression.Negation e) {
      Evaluator x = compile(e.operand(), slots);
      return s -> -x.value(s);
    } else if (expression instanceof Expression.Sum e) {
      return Operations.plus(e.left(), e.right(), slots);
    } else if (expression instanceof Expression.Difference e) {
      return Operations.minus(e.left(), e.right(), slots);
    } else if (expression instanceof Expression.Product e) {
      return Operations.times(e.left(), e.right(), slots);
    } else if (expression instanceof Expression.Quotient e) {
      return Operations.over(e.left(), e.right(), slots);
    } else if (expression instanceof Expression.Power e) {
      return power(e, slots);
    } else if (expression instanceof Expression.Call e) {
      return call(e, slots);
    } else if (expression instanceof Expression.Extreme e) {
      return extreme(e, slots);
    } else if (expression instanceof Expression.Choice e) {
      return choice(e, slots);
    } else if (expression instanceof Interpolation e) {
      return interpolation(e, slots);
    }
    throw new IllegalStateException("Unknown formula " + expression);
  }

  static double finite(double value) {
    return Math.abs(value) <= Double.MAX_VALUE ? value : Double.NaN;
  }

  private static Evaluator power(Expression.Power power, Map<String, Integer> slots) {
    Evaluator base = compile(power.base(), slots);
    if (power.exponent() instanceof Expression.Constant fixed) {
      double exponent = fixed.value();
      if (exponent == 2) {
        return s -> {
          double x = base.value(s);
          return finite(x * x);
        };
      }
      if (exponent == 3) {
        return s -> {
          double x = base.value(s);
          return finite(x * x * x);
        };
      }
      return s -> finite(Math.pow(base.value(s), exponent));
    }
    Evaluator exponent = compile(power.exponent(), slots);
    return s -> variablePower(base.value(s), exponent.value(s));
  }

  private static double variablePower(double base, double exponent) {
    boolean inDomain = base > 0 || (base == 0 && exponent > 0);
    return inDomain ? finite(Math.pow(base, exponent)) : Double.NaN;
  }

  private static Evaluator call(Expression.Call call, Map<String, Integer> slots) {
    Evaluator x = compile(call.arguments().get(0), slots);
    return switch (call.function()) {
      case SQRT -> s -> Math.sqrt(x.value(s));
      case ABS -> s -> Math.abs(x.value(s));
      case SIN -> s -> Math.sin(angle(x.value(s)));
      case COS -> s -> Math.cos(angle(x.value(s)));
      case TAN -> s -> Math.tan(angle(x.value(s)));
      case ATAN -> s -> Math.atan(x.value(s));
      case EXP -> s -> finite(Math.exp(x.value(s)));
      case LN -> s -> finite(Math.log(x.value(s)));
      case TANH -> s -> Math.tanh(x.value(s));
      case ATAN2 -> {
        Evaluator y = compile(call.arguments().get(1), slots);
        yield s -> angleOf(x.value(s), y.value(s));
      }
    };
  }

  private static double angle(double x) {
    return Math.abs(x) < LARGEST_ANGLE ? x : Double.NaN;
  }

  /** The null vector has no angle; negative zero is zero. */
  private static double angleOf(double x, double y) {
    return x == 0 && y == 0 ? Double.NaN : Math.atan2(y + 0.0, x);
  }

  private static Evaluator extreme(Expression.Extreme extreme, Map<String, Integer> slots) {
    List<Expression> operands = extreme.operands();
    Evaluator[] all = new Evaluator[operands.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = compile(operands.get(i), slots);
    }
    if (extreme.largest()) {
      return s -> {
        double best = all[0].value(s);
        for (int i = 1; i < all.length; i++) {
          best = Math.max(best, all[i].value(s));
        }
        return best;
      };
    }
    return s -> {
      double best = all[0].value(s);
      for (int i = 1; i < all.length; i++) {
        best = Math.min(best, all[i].value(s));
      }
      return best;
    };
  }

  private static Evaluator interpolation(Interpolation table, Map<String, Integer> slots) {
    Evaluator argument = compile(table.argument(), slots);
    double[] at = table.rows().stream().mapToDouble(Interpolation.Row::at).toArray();
    double[] value = table.rows().stream().mapToDouble(Interpolation.Row::value).toArray();
    return s -> {
      double x = argument.value(s);
      for (int i = 1; i < at.length; i++) {
        if (x >= at[i - 1] && x <= at[i]) {
          return finite(
              value[i - 1] + (x - at[i - 1]) * (value[i] - value[i - 1]) / (at[i] - at[i - 1]));
        }
      }
      return Double.NaN;
    };
  }

  private static Evaluator choice(Expression.Choice choice, Map<String, Integer> slots) {
    Evaluator condition = truth(choice.condition(), slots);
    Evaluator a = compile(choice.whenTrue(), slots);
    Evaluator b = compile(choice.whenFalse(), slots);
    return s -> {
      double truth = condition.value(s);
      return truth > 0 ? a.value(s) : truth == 0 ? b.value(s) : Double.NaN;
    };
  }

  /** One if the condition holds, zero if not, NaN if any part of it has no value. */
  private static Evaluator truth(Condition condition, Map<String, Integer> slots) {
    if (condition instanceof Condition.Comparison c) {
      return comparison(c, slots);
    } else if (condition instanceof Condition.Both c) {
      Evaluator a = truth(c.first(), slots);
      Evaluator b = truth(c.second(), slots);
      return s -> Math.min(a.value(s), b.value(s));
    } else if (condition instanceof Condition.Either c) {
      Evaluator a = truth(c.first(), slots);
      Evaluator b = truth(c.second(), slots);
      return s -> Math.max(a.value(s), b.value(s));
    } else if (condition instanceof Condition.Not c) {
      Evaluator a = truth(c.operand(), slots);
      return s -> 1 - a.value(s);
    }
    throw new IllegalStateException("Unknown condition " + condition);
  }

  private static Evaluator comparison(Condition.Comparison c, Map<String, Integer> slots) {
    Evaluator a = compile(c.left(), slots);
    Evaluator b = compile(c.right(), slots);
    return switch (c.relation()) {
      case LESS -> s -> less(a.value(s), b.value(s));
      case LESS_OR_EQUAL -> s -> lessOrEqual(a.value(s), b.value(s));
      case GREATER -> s -> less(b.value(s), a.value(s));
      case GREATER_OR_EQUAL -> s -> lessOrEqual(b.value(s), a.value(s));
    };
  }

  private static double less(double a, double b) {
    return a < b ? 1 : a >= b ? 0 : Double.NaN;
  }

  private static double lessOrEqual(double a, double b) {
    return a <= b ? 1 : a > b ? 0 : Double.NaN;
  }
}
