package spanledger.procedure;

import java.util.Map;
import java.util.Objects;

/**
 * The four operations, in forms that read inputs, steps and constants themselves: most formulas are
 * sums and products of these, and a call less for each is most of their time.
 */
final class Operations {

  private Operations() {}

  static Evaluator plus(Expression left, Expression right, Map<String, Integer> slots) {
    if (left instanceof Reference l) {
      int a = slot(l, slots);
      if (right instanceof Reference r) {
        int b = slot(r, slots);
        return s -> EvaluatorCompiler.finite(s[a] + s[b]);
      }
      if (right instanceof Expression.Constant r) {
        double b = r.value();
        return s -> EvaluatorCompiler.finite(s[a] + b);
      }
      Evaluator b = EvaluatorCompiler.compile(right, slots);
      return s -> EvaluatorCompiler.finite(s[a] + b.value(s));
    }
    Evaluator a = EvaluatorCompiler.compile(left, slots);
    if (right instanceof Reference r) {
      int b = slot(r, slots);
      return s -> EvaluatorCompiler.finite(a.value(s) + s[b]);
    }
    if (right instanceof Expression.Constant r) {
      double b = r.value();
      return s -> EvaluatorCompiler.finite(a.value(s) + b);
    }
    Evaluator b = EvaluatorCompiler.compile(right, slots);
    return s -> EvaluatorCompiler.finite(a.value(s) + b.value(s));
  }

  static Evaluator minus(Expression left, Expression right, Map<String, Integer> slots) {
    if (left instanceof Reference l) {
      int a = slot(l, slots);
      if (right instanceof Reference r) {
        int b = slot(r, slots);
        return s -> EvaluatorCompiler.finite(s[a] - s[b]);
      }
      if (right instanceof Expression.Constant r) {
        double b = r.value();
        return s -> EvaluatorCompiler.finite(s[a] - b);
      }
      Evaluator b = EvaluatorCompiler.compile(right, slots);
      return s -> EvaluatorCompiler.finite(s[a] - b.value(s));
    }
    Evaluator a = EvaluatorCompiler.compile(left, slots);
    if (right instanceof Reference r) {
      int b = slot(r, slots);
      return s -> EvaluatorCompiler.finite(a.value(s) - s[b]);
    }
    if (right instanceof Expression.Constant r) {
      double b = r.value();
      return s -> EvaluatorCompiler.finite(a.value(s) - b);
    }
    Evaluator b = EvaluatorCompiler.compile(right, slots);
    return s -> EvaluatorCompiler.finite(a.value(s) - b.value(s));
  }

  static Evaluator times(Expression left, Expression right, Map<String, Integer> slots) {
    if (left instanceof Reference l) {
      int a = slot(l, slots);
      if (right instanceof Reference r) {
        int b = slot(r, slots);
        return s -> EvaluatorCompiler.finite(s[a] * s[b]);
      }
      if (right instanceof Expression.Constant r) {
        double b = r.value();
        return s -> EvaluatorCompiler.finite(s[a] * b);
      }
      Evaluator b = EvaluatorCompiler.compile(right, slots);
      return s -> EvaluatorCompiler.finite(s[a] * b.value(s));
    }
    Evaluator a = EvaluatorCompiler.compile(left, slots);
    if (right instanceof Reference r) {
      int b = slot(r, slots);
      return s -> EvaluatorCompiler.finite(a.value(s) * s[b]);
    }
    if (right instanceof Expression.Constant r) {
      double b = r.value();
      return s -> EvaluatorCompiler.finite(a.value(s) * b);
    }
    Evaluator b = EvaluatorCompiler.compile(right, slots);
    return s -> EvaluatorCompiler.finite(a.value(s) * b.value(s));
  }

  static Evaluator over(Expression left, Expression right, Map<String, Integer> slots) {
    if (left instanceof Reference l) {
      int a = slot(l, slots);
      if (right instanceof Reference r) {
        int b = slot(r, slots);
        return s -> EvaluatorCompiler.finite(s[a] / s[b]);
      }
      if (right instanceof Expression.Constant r) {
        double b = r.value();
        return s -> EvaluatorCompiler.finite(s[a] / b);
      }
      Evaluator b = EvaluatorCompiler.compile(right, slots);
      return s -> EvaluatorCompiler.finite(s[a] / b.value(s));
    }
    Evaluator a = EvaluatorCompiler.compile(left, slots);
    if (right instanceof Reference r) {
      int b = slot(r, slots);
      return s -> EvaluatorCompiler.finite(a.value(s) / s[b]);
    }
    if (right instanceof Expression.Constant r) {
      double b = r.value();
      return s -> EvaluatorCompiler.finite(a.value(s) / b);
    }
    Evaluator b = EvaluatorCompiler.compile(right, slots);
    return s -> EvaluatorCompiler.finite(a.value(s) / b.value(s));
  }

  private static int slot(Reference reference, Map<String, Integer> slots) {
    return Objects.requireNonNull(slots.get(reference.symbol()));
  }
}
