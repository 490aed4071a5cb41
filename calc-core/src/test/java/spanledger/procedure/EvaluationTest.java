package spanledger.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.atan;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.exp;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.ln;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.not;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sin;
import static spanledger.procedure.Formulas.sqrt;
import static spanledger.procedure.Formulas.tan;
import static spanledger.procedure.Formulas.tanh;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** What each kind of formula gives, and where it gives nothing. */
class EvaluationTest {

  private static final Source SOURCE = Source.derived("arithmetic");
  private static final Reference A = new Reference("a", Dimension.NONE);
  private static final Reference B = new Reference("b", Dimension.NONE);

  @Test
  void arithmetic() {
    assertThat(value(A.plus(B).times(3).minus(A.over(B)).negated(), 6, 4)).isEqualTo(-28.5);
    assertThat(value(A.pow(2).plus(A.pow(3)).plus(A.pow(5)), -2, 0)).isEqualTo(4 - 8 - 32);
    assertThat(value(A.pow(-2), -4, 0)).isEqualTo(0.0625);
    assertThat(value(A.pow(B), 9, 1.5)).isEqualTo(27);
    assertThat(value(pi().over(2), 0, 0)).isEqualTo(Math.PI / 2);
    assertThat(A.pow(1)).isSameAs(A);
  }

  @Test
  void functions() {
    // Values by definition of the functions; one unit in the last place for the library's rounding.
    assertThat(value(sqrt(A), 2.25, 0)).isEqualTo(1.5);
    assertThat(value(abs(A), -2.25, 0)).isEqualTo(2.25);
    assertThat(value(sin(pi().over(6)), 0, 0)).isCloseTo(0.5, within(1e-15));
    assertThat(value(cos(pi().over(3)), 0, 0)).isCloseTo(0.5, within(1e-15));
    assertThat(value(tan(pi().over(4)), 0, 0)).isCloseTo(1, within(1e-15));
    assertThat(value(atan(number(1)), 0, 0)).isCloseTo(Math.PI / 4, within(1e-15));
    assertThat(value(exp(ln(A)), 7, 0)).isCloseTo(7, within(1e-14));
    assertThat(value(tanh(A), 0.5, 0)).isCloseTo((Math.E - 1) / (Math.E + 1), within(1e-15));
    assertThat(value(angleOf(A, B), -1, -1)).isCloseTo(-3 * Math.PI / 4, within(1e-15));
  }

  @Test
  void extremesAndChoices() {
    assertThat(value(max(A, B, number(3)), 1, 2)).isEqualTo(3);
    assertThat(value(min(A, B, number(3)), 1, 2)).isEqualTo(1);
    Expression strict = choose(less(A, B), number(1), number(2));
    assertThat(value(strict, 1, 1)).isEqualTo(2);
    assertThat(value(choose(atMost(A, B), number(1), number(2)), 1, 1)).isEqualTo(1);
    assertThat(value(choose(greater(A, B), number(1), number(2)), 1, 1)).isEqualTo(2);
    assertThat(value(choose(atLeast(A, B), number(1), number(2)), 1, 1)).isEqualTo(1);
    Condition between = greater(A, number(0)).and(less(A, number(1)));
    assertThat(value(choose(between, number(1), number(2)), 0.5, 0)).isEqualTo(1);
    assertThat(value(choose(not(between), number(1), number(2)), 0.5, 0)).isEqualTo(2);
    assertThat(value(choose(between.or(less(A, B)), number(1), number(2)), 5, 6)).isEqualTo(1);
    assertThat(value(choose(between.or(less(A, B)), number(1), number(2)), 5, 4)).isEqualTo(2);
  }

  @Test
  void tables() {
    Expression table = table(A);
    assertThat(value(table, 0, 0)).isEqualTo(10);
    assertThat(value(table, 0.5, 0)).isEqualTo(15);
    assertThat(value(table, 1, 0)).isEqualTo(20);
    assertThat(value(table, 3, 0)).isEqualTo(10);
    assertThat(value(table, 5, 0)).isEqualTo(0);
    assertThat(value(table, -0.001, 0)).isNaN();
    assertThat(value(table, 5.001, 0)).isNaN();
  }

  @Test
  void thereIsNoValueWhereSpreadsheetsShowAnError() {
    assertThat(value(A.over(B), 1, 0)).isNaN();
    assertThat(value(A.over(B), 0, 0)).isNaN();
    assertThat(value(sqrt(A), -1e-300, 0)).isNaN();
    assertThat(value(ln(A), 0, 0)).isNaN();
    assertThat(value(ln(A), -1, 0)).isNaN();
    assertThat(value(exp(A), 710, 0)).isNaN();
    assertThat(value(A.times(A), 1e200, 0)).isNaN();
    assertThat(value(A.pow(2), 1e200, 0)).isNaN();
    assertThat(value(A.pow(3), -1e200, 0)).isNaN();
    assertThat(value(A.plus(A), Double.MAX_VALUE, 0)).isNaN();
    assertThat(value(A.minus(B), Double.MAX_VALUE, -Double.MAX_VALUE)).isNaN();
    assertThat(value(A.pow(-1), 0, 0)).isNaN();
    assertThat(value(angleOf(A, B), 0, 0)).isNaN();
    assertThat(value(sin(A), 0x1p27, 0)).isNaN();
  }

  @Test
  void powersOfNegativeNumbersNeedAWholeConstant() {
    assertThat(value(A.pow(0.5), -4, 0)).isNaN();
    assertThat(value(A.pow(0.2), -32, 0)).isNaN();
    assertThat(value(A.pow(0.333333333333333), -8, 0)).isNaN();
    assertThat(value(A.pow(B), -2, 3)).isNaN();
    assertThat(value(A.pow(B), 0, 0)).isNaN();
    assertThat(value(A.pow(B), 0, -1)).isNaN();
    assertThat(value(A.pow(B), 0, 0.5)).isZero();
  }

  /** A missing value must not be lost on the way, where NaN or infinity would be. */
  @ParameterizedTest
  @ValueSource(doubles = {0, -0.0})
  void whatNeedsAMissingValueHasNone(double zero) {
    Expression missing = number(1).over(A);
    Expression one = number(1);
    Expression two = number(2);

    assertThat(value(one.over(missing), zero, 0)).isNaN();
    assertThat(value(min(missing, one), zero, 0)).isNaN();
    assertThat(value(max(one, missing), zero, 0)).isNaN();
    assertThat(value(atan(missing), zero, 0)).isNaN();
    assertThat(value(tanh(missing), zero, 0)).isNaN();
    assertThat(value(exp(missing.negated()), zero, 0)).isNaN();
    assertThat(value(one.pow(missing), zero, 0)).isNaN();
    assertThat(value(missing.pow(A), zero, 0)).isNaN();
    assertThat(value(table(missing), zero, 0)).isNaN();
    assertThat(value(choose(less(missing, one), one, two), zero, 0)).isNaN();
    assertThat(value(choose(not(less(missing, one)), one, two), zero, 0)).isNaN();
    // Spreadsheets work out every part of a condition.
    Condition no = less(two, one);
    assertThat(value(choose(no.and(atMost(missing, one)), one, two), zero, 0)).isNaN();
    assertThat(value(choose(not(no).or(greater(missing, one)), one, two), zero, 0)).isNaN();
  }

  @Test
  void theBranchNotTakenNeedsNoValue() {
    Expression guarded = choose(greater(A, number(0)), ln(A), number(0));
    assertThat(value(guarded, 0, 0)).isZero();
    assertThat(value(guarded, 1, 0)).isZero();
  }

  @Test
  void negativeZeroIsZero() {
    assertThat(value(angleOf(A, B), -1, -0.0)).isEqualTo(Math.PI);
    assertThat(value(choose(less(A, B), number(1), number(2)), -0.0, 0)).isEqualTo(2);
  }

  /** Sweeps run millions of times; garbage would slow every thread down. */
  @Test
  void evaluatingAllocatesNothing() {
    Procedure.Builder p = Procedure.named("all", "All kinds of formulas");
    Reference a = p.input("a", "a", Dimension.NONE);
    Reference b = p.input("b", "b", Dimension.NONE);
    List<Expression> all =
        List.of(
            a.plus(b).times(a.minus(b)).over(a).negated(),
            a.pow(2).plus(a.pow(3)).plus(a.pow(4)).plus(a.pow(0.5)).plus(a.pow(b)),
            sqrt(a).plus(abs(b)).plus(sin(a)).plus(cos(a)).plus(tan(a)).plus(atan(a)),
            angleOf(a, b).plus(exp(a)).plus(ln(a)).plus(tanh(a)).plus(pi()),
            max(a, b, number(3)).plus(min(a, b, number(1))),
            choose(less(a, b).and(not(greater(a, b)).or(atLeast(a, b))), a, b),
            table(a));
    for (int i = 0; i < all.size(); i++) {
      p.step("s" + i, "step", Dimension.NONE, all.get(i), SOURCE);
    }
    CompiledProcedure compiled = p.build().compile();
    double[] values = compiled.newSlots();
    compiled.evaluate(values);

    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    double sum = 0;
    for (int i = 0; i < 100_000; i++) {
      values[0] = 0.5 + i % 4;
      values[1] = 1.5 + i % 3;
      compiled.evaluate(values);
      sum += values[values.length - 1];
    }
    long allocated = threads.getCurrentThreadAllocatedBytes() - before;

    assertThat(sum).isFinite();
    // The measuring itself may allocate a little, once; a byte per evaluation would be 100 000.
    assertThat(allocated).isLessThan(10_000);
  }

  private static Interpolation table(Expression at) {
    return new Interpolation(
        List.of(
            new Interpolation.Row(0, 10),
            new Interpolation.Row(1, 20),
            new Interpolation.Row(5, 0)),
        at,
        Dimension.NONE,
        Dimension.NONE);
  }

  private static double value(Expression formula, double a, double b) {
    Procedure.Builder p = Procedure.named("one", "One formula");
    p.input("a", "a", Dimension.NONE);
    p.input("b", "b", Dimension.NONE);
    p.step("x", "x", Dimension.NONE, formula, SOURCE);
    CompiledProcedure compiled = p.build().compile();
    double[] values = {a, b, 0};
    compiled.evaluate(values);
    return values[2];
  }
}
