package spanledger.analysis;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.exp;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sin;
import static spanledger.procedure.Formulas.sqrt;
import static spanledger.procedure.Formulas.tan;
import static spanledger.procedure.Formulas.tanh;

import spanledger.procedure.Condition;
import spanledger.procedure.Expression;

/**
 * Formulas of a bar under axial force, by its reduced force κ = P L²/(E I β), positive in
 * compression.
 *
 * <p>Each has three forms that agree where they meet: circular functions in compression, hyperbolic
 * ones in tension, and between them a series, because the closed forms are quotients of vanishing
 * numbers there. The series are those of the closed forms about κ = 0
 * (docs/theory/second-order.md).
 */
final class BeamFunctions {

  /** Beyond this size of κ the closed forms are used; the series then errs by less than 1e-12. */
  private static final double SMALL = 0.02;

  private BeamFunctions() {}

  /** How much more the end turns at which a unit moment acts: 1 at κ = 0. */
  static Expression near(Expression k) {
    Expression u = sqrt(k);
    Expression v = sqrt(k.negated());
    return threeForms(
        k,
        number(1).minus(u.over(tan(u))).times(3).over(k),
        series(k, 31185, 31185, 2079, 198, 19.8, 2),
        v.over(tanh(v)).minus(number(1)).times(3).over(k.negated()));
  }

  /** How much more the other end turns: 1 at κ = 0. */
  static Expression far(Expression k) {
    Expression u = sqrt(k);
    Expression v = sqrt(k.negated());
    return threeForms(
        k,
        u.over(sin(u)).minus(number(1)).times(6).over(k),
        series(k, 3991680, 3991680, 465696, 49104, 5029.2, 511),
        number(1).minus(v.times(overSinh(number(1), v))).times(6).over(k.negated()));
  }

  /**
   * Deflection at ξ by an end moment at ξ = 1, per L²/(E I β): ω = (sin uξ / sin u − ξ)/κ; it is (ξ
   * − ξ³)/6 at κ = 0. By the reciprocal theorem it is also the turn of that end by a force at ξ.
   */
  static Expression bow(Expression k, Expression x) {
    Expression u = sqrt(k);
    Expression v = sqrt(k.negated());
    return threeForms(
        k,
        sin(u.times(x)).over(sin(u)).minus(x).over(k),
        powers(
            k,
            odd(x, 6, 1, -1),
            odd(x, 360, 7, -10, 3),
            odd(x, 15120, 31, -49, 21, -3),
            odd(x, 1814400, 381, -620, 294, -60, 5)),
        overSinh(x, v).minus(x).over(k));
  }

  /** ω summed up from 0 to ξ. */
  static Expression bowSum(Expression k, Expression x) {
    Expression u = sqrt(k);
    Expression v = sqrt(k.negated());
    Expression half = x.pow(2).over(2);
    return threeForms(
        k,
        sin(u.times(x).over(2)).pow(2).times(2).over(u.times(sin(u))).minus(half).over(k),
        powers(
            k,
            even(x, 6, 1, -1),
            even(x, 360, 7, -10, 3),
            even(x, 15120, 31, -49, 21, -3),
            even(x, 1814400, 381, -620, 294, -60, 5)),
        // (cosh vξ - 1)/sinh v = tanh(vξ/2) sinh(vξ)/sinh v
        tanh(v.times(x).over(2)).times(overSinh(x, v)).over(v).minus(half).over(k));
  }

  /** The sum of ω summed up again from 0 to ξ. */
  static Expression bowSecondSum(Expression k, Expression x) {
    Expression u = sqrt(k);
    Expression v = sqrt(k.negated());
    Expression sixth = x.pow(3).over(6);
    return threeForms(
        k,
        x.minus(sin(u.times(x)).over(u)).over(u.times(sin(u))).minus(sixth).over(k),
        powers(
            k,
            third(x, 6, 1, -1),
            third(x, 360, 7, -10, 3),
            third(x, 15120, 31, -49, 21, -3),
            third(x, 1814400, 381, -620, 294, -60, 5)),
        overSinh(x, v).over(v).minus(x.times(overSinh(number(1), v))).over(v).minus(sixth).over(k));
  }

  /** Change of ω per ξ. */
  static Expression bowSlope(Expression k, Expression x) {
    Expression u = sqrt(k);
    Expression v = sqrt(k.negated());
    return threeForms(
        k,
        u.times(cos(u.times(x))).over(sin(u)).minus(number(1)).over(k),
        powers(
            k,
            slope(x, 6, 1, -1),
            slope(x, 360, 7, -10, 3),
            slope(x, 15120, 31, -49, 21, -3),
            slope(x, 1814400, 381, -620, 294, -60, 5)),
        v.times(coshOverSinh(x, v)).minus(number(1)).over(k));
  }

  /** sin(uξ)/u: what grows from a unit slope at the start; ξ at κ = 0. */
  static Expression sine(Expression k, Expression x) {
    Expression q = k.times(x.pow(2));
    Expression v = sqrt(k.negated());
    return threeForms(
        k,
        sin(sqrt(k).times(x)).over(sqrt(k)),
        x.times(series(q, 5040, 5040, -840, 42, -1)),
        exp(v.times(x)).minus(exp(v.times(x).negated())).over(v.times(2)));
  }

  /** cos(uξ): the slope of {@link #sine}; 1 at κ = 0. */
  static Expression cosine(Expression k, Expression x) {
    Expression q = k.times(x.pow(2));
    Expression v = sqrt(k.negated());
    return threeForms(
        k,
        cos(sqrt(k).times(x)),
        series(q, 40320, 40320, -20160, 1680, -56, 1),
        exp(v.times(x)).plus(exp(v.times(x).negated())).over(2));
  }

  /** {@link #sine} summed up from 0 to ξ; ξ²/2 at κ = 0. */
  static Expression sineSum(Expression k, Expression x) {
    Expression q = k.times(x.pow(2));
    Expression v = sqrt(k.negated());
    Expression half = v.times(x).over(2);
    return threeForms(
        k,
        sin(sqrt(k).times(x).over(2)).pow(2).times(2).over(k),
        x.pow(2).over(2).times(series(q, 20160, 20160, -1680, 56, -1)),
        exp(half).minus(exp(half.negated())).pow(2).over(k.times(-2)));
  }

  /** The sum of {@link #sine} summed up again; ξ³/6 at κ = 0. */
  static Expression sineSecondSum(Expression k, Expression x) {
    Expression q = k.times(x.pow(2));
    Expression v = sqrt(k.negated());
    return threeForms(
        k,
        x.minus(sin(sqrt(k).times(x)).over(sqrt(k))).over(k),
        x.pow(3).over(6).times(series(q, 60480, 60480, -3024, 72, -1)),
        x.minus(exp(v.times(x)).minus(exp(v.times(x).negated())).over(v.times(2))).over(k));
  }

  /** Share of an end moment at ξ = 1 that is left at ξ: sin uξ / sin u. */
  static Expression share(Expression k, Expression x) {
    return x.plus(k.times(bow(k, x)));
  }

  /** Change of {@link #share} per ξ. */
  static Expression shareSlope(Expression k, Expression x) {
    return number(1).plus(k.times(bowSlope(k, x)));
  }

  private static Expression threeForms(
      Expression k, Expression compression, Expression small, Expression tension) {
    Condition pushed = greater(k, number(SMALL));
    Condition pulled = less(k, number(-SMALL));
    return choose(pushed, compression, choose(pulled, tension, small));
  }

  /** sinh(v x)/sinh(v), or for x = 1 as a number 1/sinh v, without large numbers. */
  private static Expression overSinh(Expression x, Expression v) {
    Expression all = number(1).minus(exp(v.times(-2)));
    if (x instanceof Expression.Constant) {
      return exp(v.negated()).times(2).over(all);
    }
    Expression near = exp(v.times(x.minus(number(1))));
    return near.minus(exp(v.times(x.plus(number(1))).negated())).over(all);
  }

  private static Expression coshOverSinh(Expression x, Expression v) {
    Expression all = number(1).minus(exp(v.times(-2)));
    Expression near = exp(v.times(x.minus(number(1))));
    return near.plus(exp(v.times(x.plus(number(1))).negated())).over(all);
  }

  private static Expression series(Expression k, double divisor, double... coefficients) {
    Expression sum = number(coefficients[coefficients.length - 1]);
    for (int i = coefficients.length - 2; i >= 0; i--) {
      sum = k.times(sum).plus(number(coefficients[i]));
    }
    return sum.over(divisor);
  }

  private static Expression powers(Expression k, Expression... terms) {
    Expression sum = terms[terms.length - 1];
    for (int i = terms.length - 2; i >= 0; i--) {
      sum = k.times(sum).plus(terms[i]);
    }
    return sum;
  }

  /** (c0 x + c1 x³ + c2 x⁵ ...)/d */
  private static Expression odd(Expression x, double d, double... c) {
    return polynomial(x, 1, d, c, 0);
  }

  /** The integral of {@link #odd}. */
  private static Expression even(Expression x, double d, double... c) {
    return polynomial(x, 1, d, c, 1);
  }

  /** The integral of {@link #even}. */
  private static Expression third(Expression x, double d, double... c) {
    return polynomial(x, 1, d, c, 2);
  }

  /** The derivative of {@link #odd}. */
  private static Expression slope(Expression x, double d, double... c) {
    return polynomial(x, 1, d, c, -1);
  }

  private static Expression polynomial(
      Expression x, int lowest, double divisor, double[] c, int integrations) {
    Expression square = x.pow(2);
    Expression sum =
        number(coefficient(c[c.length - 1], lowest + 2 * (c.length - 1), integrations));
    for (int i = c.length - 2; i >= 0; i--) {
      sum = square.times(sum).plus(number(coefficient(c[i], lowest + 2 * i, integrations)));
    }
    int power = lowest + integrations;
    Expression shaped = power == 0 ? sum : power == 1 ? x.times(sum) : x.pow(power).times(sum);
    return shaped.over(divisor * multiple(integrations));
  }

  /** Makes all coefficients whole numbers. */
  private static double multiple(int integrations) {
    return integrations == 1 ? 120 : integrations == 2 ? 27720 : 1;
  }

  private static double coefficient(double c, int power, int integrations) {
    return switch (integrations) {
      case -1 -> c * power;
      case 1 -> c * multiple(1) / (power + 1);
      case 2 -> c * multiple(2) / ((power + 1.0) * (power + 2.0));
      default -> c;
    };
  }
}
