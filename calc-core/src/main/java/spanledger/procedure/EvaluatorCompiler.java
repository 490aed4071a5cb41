package spanledger.procedure;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Turns formulas into evaluators, resolving each symbol to its place once. */
final class EvaluatorCompiler {

  /** Decides a condition over the places. */
  @FunctionalInterface
  private interface Decision {
    boolean holds(double[] slots);
  }

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
      Evaluator a = compile(e.left(), slots);
      Evaluator b = compile(e.right(), slots);
      return s -> a.value(s) + b.value(s);
    } else if (expression instanceof Expression.Difference e) {
      Evaluator a = compile(e.left(), slots);
      Evaluator b = compile(e.right(), slots);
      return s -> a.value(s) - b.value(s);
    } else if (expression instanceof Expression.Product e) {
      Evaluator a = compile(e.left(), slots);
      Evaluator b = compile(e.right(), slots);
      return s -> a.value(s) * b.value(s);
    } else if (expression instanceof Expression.Quotient e) {
      Evaluator a = compile(e.left(), slots);
      Evaluator b = compile(e.right(), slots);
      return s -> a.value(s) / b.value(s);
    } else if (expression instanceof Expression.Power e) {
      return power(e, slots);
    } else if (expression instanceof Expression.Call e) {
      return call(e, slots);
    } else if (expression instanceof Expression.Extreme e) {
      return extreme(e, slots);
    } else if (expression instanceof Expression.Choice e) {
      Decision condition = compile(e.condition(), slots);
      Evaluator a = compile(e.whenTrue(), slots);
      Evaluator b = compile(e.whenFalse(), slots);
      return s -> condition.holds(s) ? a.value(s) : b.value(s);
    } else if (expression instanceof Interpolation e) {
      return interpolation(e, slots);
    }
    throw new IllegalStateException("Unknown formula " + expression);
  }

  private static Evaluator power(Expression.Power power, Map<String, Integer> slots) {
    Evaluator base = compile(power.base(), slots);
    if (power.exponent() instanceof Expression.Constant fixed) {
      double exponent = fixed.value();
      if (exponent == 2) {
        return s -> {
          double x = base.value(s);
          return x * x;
        };
      }
      if (exponent == 3) {
        return s -> {
          double x = base.value(s);
          return x * x * x;
        };
      }
    }
    Evaluator exponent = compile(power.exponent(), slots);
    return s -> raised(base.value(s), exponent.value(s));
  }

  /** Zero to the power zero has no value: spreadsheets call it an error. */
  private static double raised(double base, double exponent) {
    return base == 0 && exponent == 0 ? Double.NaN : Math.pow(base, exponent);
  }

  private static Evaluator call(Expression.Call call, Map<String, Integer> slots) {
    Evaluator x = compile(call.arguments().get(0), slots);
    return switch (call.function()) {
      case SQRT -> s -> Math.sqrt(x.value(s));
      case ABS -> s -> Math.abs(x.value(s));
      case SIN -> s -> Math.sin(x.value(s));
      case COS -> s -> Math.cos(x.value(s));
      case TAN -> s -> Math.tan(x.value(s));
      case ATAN -> s -> Math.atan(x.value(s));
      case EXP -> s -> Math.exp(x.value(s));
      case LN -> s -> Math.log(x.value(s));
      case TANH -> s -> Math.tanh(x.value(s));
      case ATAN2 -> {
        Evaluator y = compile(call.arguments().get(1), slots);
        yield s -> angle(x.value(s), y.value(s));
      }
    };
  }

  /** The null vector has no angle: spreadsheets call it an error. */
  private static double angle(double x, double y) {
    return x == 0 && y == 0 ? Double.NaN : Math.atan2(y, x);
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
          return value[i - 1] + (x - at[i - 1]) * (value[i] - value[i - 1]) / (at[i] - at[i - 1]);
        }
      }
      return Double.NaN;
    };
  }

  private static Decision compile(Condition condition, Map<String, Integer> slots) {
    if (condition instanceof Condition.Comparison c) {
      Evaluator a = compile(c.left(), slots);
      Evaluator b = compile(c.right(), slots);
      return switch (c.relation()) {
        case LESS -> s -> a.value(s) < b.value(s);
        case LESS_OR_EQUAL -> s -> a.value(s) <= b.value(s);
        case GREATER -> s -> a.value(s) > b.value(s);
        case GREATER_OR_EQUAL -> s -> a.value(s) >= b.value(s);
      };
    } else if (condition instanceof Condition.Both c) {
      Decision a = compile(c.first(), slots);
      Decision b = compile(c.second(), slots);
      return s -> a.holds(s) && b.holds(s);
    } else if (condition instanceof Condition.Either c) {
      Decision a = compile(c.first(), slots);
      Decision b = compile(c.second(), slots);
      return s -> a.holds(s) || b.holds(s);
    } else if (condition instanceof Condition.Not c) {
      Decision a = compile(c.operand(), slots);
      return s -> !a.holds(s);
    }
    throw new IllegalStateException("Unknown condition " + condition);
  }
}
