package spanledger.verification.procedure;

import java.util.List;
import spanledger.procedure.Condition;
import spanledger.procedure.Expression;
import spanledger.procedure.Interpolation;
import spanledger.procedure.Reference;
import spanledger.verification.procedure.Estimate.UndecidedException;

/**
 * Works out formulas by walking over them, apart from the compiled evaluation, with the scale of
 * every value. Scales follow from the derivatives of each operation (first-order error analysis).
 */
final class Estimator {

  private final List<Double> inputs;

  Estimator(List<Double> inputs) {
    this.inputs = inputs;
  }

  /**
   * The value with its scale.
   *
   * @throws UndecidedException if rounding decides which branch is taken, whether there is a value,
   *     or whether it is in range
   */
  Estimate of(Expression expression) {
    if (expression instanceof Expression.Constant e) {
      return Estimate.exact(e.value());
    } else if (expression instanceof Expression.Pi) {
      return Estimate.exact(Math.PI);
    } else if (expression instanceof Reference e) {
      return Estimate.exact(inputs.get(Sample.column(e)));
    } else if (expression instanceof Expression.Negation e) {
      return of(e.operand()).negated();
    } else if (expression instanceof Expression.Sum e) {
      return sum(of(e.left()), of(e.right()));
    } else if (expression instanceof Expression.Difference e) {
      return sum(of(e.left()), of(e.right()).negated());
    } else if (expression instanceof Expression.Product e) {
      return product(of(e.left()), of(e.right()));
    } else if (expression instanceof Expression.Quotient e) {
      return quotient(of(e.left()), of(e.right()));
    } else if (expression instanceof Expression.Power e) {
      return power(e);
    } else if (expression instanceof Expression.Call e) {
      return EstimatedFunctions.call(e.function(), e.arguments().stream().map(this::of).toList());
    } else if (expression instanceof Expression.Extreme e) {
      return extreme(e);
    } else if (expression instanceof Expression.Choice e) {
      Estimate truth = truth(e.condition());
      return truth.missing() ? truth : of(truth.value() == 1 ? e.whenTrue() : e.whenFalse());
    } else if (expression instanceof Interpolation e) {
      return interpolation(e);
    }
    throw new IllegalStateException("Unknown formula " + expression);
  }

  private static Estimate sum(Estimate a, Estimate b) {
    if (a.missing() || b.missing()) {
      return Estimate.MISSING;
    }
    return Estimate.result(a.value() + b.value(), a.scale() + b.scale());
  }

  private static Estimate product(Estimate a, Estimate b) {
    if (a.missing() || b.missing()) {
      return Estimate.MISSING;
    }
    double value = a.value() * b.value();
    if (Double.isInfinite(value) && Double.isInfinite(a.leastSize() * b.leastSize())) {
      return Estimate.MISSING;
    }
    requireNoUnderflow(value, a.value() == 0 || b.value() == 0);
    double effect =
        Math.abs(a.value()) * b.scale() + Math.abs(b.value()) * a.scale() + a.doubt() * b.scale();
    return Estimate.result(value, effect);
  }

  private static Estimate quotient(Estimate a, Estimate b) {
    if (a.missing() || b.missing() || b.sign() == 0) {
      return Estimate.MISSING;
    }
    double value = a.value() / b.value();
    double mostDivisor = Math.abs(b.value()) + b.doubt();
    if (Double.isInfinite(value) && Double.isInfinite(a.leastSize() / mostDivisor)) {
      return Estimate.MISSING;
    }
    requireNoUnderflow(value, a.value() == 0);
    return Estimate.result(value, (a.scale() + Math.abs(value) * b.scale()) / b.leastSize());
  }

  private Estimate power(Expression.Power power) {
    Estimate base = of(power.base());
    if (power.exponent() instanceof Expression.Constant fixed) {
      return fixedPower(base, fixed.value());
    }
    Estimate exponent = of(power.exponent());
    if (base.missing() || exponent.missing()) {
      return Estimate.MISSING;
    }
    if (base.sign() < 0) {
      return Estimate.MISSING;
    }
    if (base.isZero()) {
      return exponent.sign() > 0 ? Estimate.exact(0) : Estimate.MISSING;
    }
    double value = Math.pow(base.value(), exponent.value());
    // Relative: the logarithm's error.
    double effect =
        Math.abs(exponent.value()) * base.scale() / base.leastSize()
            + Math.abs(Math.log(base.value())) * exponent.scale();
    return EstimatedFunctions.exponential(value, effect);
  }

  private static Estimate fixedPower(Estimate base, double exponent) {
    if (base.missing()) {
      return Estimate.MISSING;
    }
    boolean whole = exponent % 1 == 0;
    if (whole && exponent > 0) {
      double value = Math.pow(base.value(), exponent);
      if (Double.isInfinite(value) && Double.isInfinite(Math.pow(base.leastSize(), exponent))) {
        return Estimate.MISSING;
      }
      requireNoUnderflow(value, base.value() == 0);
      double most = Math.abs(base.value()) + base.doubt();
      return Estimate.result(value, exponent * Math.pow(most, exponent - 1) * base.scale());
    }
    int sign = base.sign();
    if (sign == 0) {
      return exponent > 0 ? Estimate.exact(0) : Estimate.MISSING;
    }
    if (sign < 0 && !whole) {
      return Estimate.MISSING;
    }
    double effect = Math.abs(exponent) * base.scale() / base.leastSize();
    return EstimatedFunctions.exponential(Math.pow(base.value(), exponent), effect);
  }

  /** Only operands that can be the extreme one lend their scale. */
  private Estimate extreme(Expression.Extreme extreme) {
    List<Estimate> all = extreme.operands().stream().map(this::of).toList();
    if (all.stream().anyMatch(Estimate::missing)) {
      return Estimate.MISSING;
    }
    int sign = extreme.largest() ? 1 : -1;
    Estimate best = all.get(0);
    for (Estimate each : all) {
      best = sign * each.value() > sign * best.value() ? each : best;
    }
    double scale = best.scale();
    for (Estimate each : all) {
      boolean inReach = Math.abs(best.value() - each.value()) <= best.doubt() + each.doubt();
      scale = inReach ? Math.max(scale, each.scale()) : scale;
    }
    return new Estimate(best.value(), scale);
  }

  private Estimate interpolation(Interpolation table) {
    Estimate x = of(table.argument());
    if (x.missing()) {
      return Estimate.MISSING;
    }
    List<Interpolation.Row> rows = table.rows();
    Interpolation.Row first = rows.get(0);
    Interpolation.Row last = rows.get(rows.size() - 1);
    if (sum(x, Estimate.exact(-first.at())).sign() < 0
        || sum(x, Estimate.exact(-last.at())).sign() > 0) {
      return Estimate.MISSING;
    }
    for (int i = 1; i < rows.size(); i++) {
      Interpolation.Row low = rows.get(i - 1);
      Interpolation.Row high = rows.get(i);
      // Near a row the neighbouring piece may be taken: the values agree, the slopes do not.
      if (Math.abs(x.value() - high.at()) <= x.doubt() + Estimate.CLOSE_CALL * Math.abs(high.at())
          && i < rows.size() - 1) {
        throw new UndecidedException("too close to a row of a table");
      }
      if (x.value() <= high.at()) {
        double slope = (high.value() - low.value()) / (high.at() - low.at());
        double value = low.value() + (x.value() - low.at()) * slope;
        double effect =
            Math.abs(low.value())
                + Math.abs(high.value())
                + Math.abs(slope) * (x.scale() + Math.abs(low.at()) + Math.abs(high.at()));
        return Estimate.result(value, effect);
      }
    }
    throw new IllegalStateException("No piece for " + x);
  }

  /** One if the condition holds, zero if not. */
  private Estimate truth(Condition condition) {
    if (condition instanceof Condition.Comparison c) {
      Estimate difference = sum(of(c.left()), of(c.right()).negated());
      if (difference.missing()) {
        return difference;
      }
      int sign = difference.sign();
      return Estimate.exact(
          switch (c.relation()) {
            case LESS -> sign < 0 ? 1 : 0;
            case LESS_OR_EQUAL -> sign <= 0 ? 1 : 0;
            case GREATER -> sign > 0 ? 1 : 0;
            case GREATER_OR_EQUAL -> sign >= 0 ? 1 : 0;
          });
    } else if (condition instanceof Condition.Both c) {
      return combined(truth(c.first()), truth(c.second()), true);
    } else if (condition instanceof Condition.Either c) {
      return combined(truth(c.first()), truth(c.second()), false);
    } else if (condition instanceof Condition.Not c) {
      Estimate operand = truth(c.operand());
      return operand.missing() ? operand : Estimate.exact(operand.value() == 1 ? 0 : 1);
    }
    throw new IllegalStateException("Unknown condition " + condition);
  }

  private static Estimate combined(Estimate a, Estimate b, boolean both) {
    if (a.missing() || b.missing()) {
      return Estimate.MISSING;
    }
    boolean first = a.value() == 1;
    boolean second = b.value() == 1;
    return Estimate.exact((both ? first && second : first || second) ? 1 : 0);
  }

  private static void requireNoUnderflow(double value, boolean zeroExpected) {
    if (value == 0 && !zeroExpected) {
      throw new UndecidedException("underflow");
    }
  }
}
