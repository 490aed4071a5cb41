package spanledger.verification.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.exp;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.ln;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.not;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;
import static spanledger.procedure.Formulas.tanh;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.procedure.Condition;
import spanledger.procedure.Expression;
import spanledger.procedure.Interpolation;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;
import spanledger.verification.calc.CalcEngine;

/**
 * At the edges of what has a value, where spreadsheet programs are known to differ from each other
 * (docs/decisions/0001-procedures.md), Java, Apache POI and LibreOffice Calc give the same: the
 * value expected by definition, or none.
 */
class DomainEdgesTest {

  private static final double NONE = Double.NaN;
  private static final Reference A = Sample.input(0);
  private static final Reference B = Sample.input(1);
  private static final Expression ONE = number(1);
  private static final Expression TWO = number(2);

  @TempDir Path folder;

  private record Edge(double expected, Sample sample) {}

  private static Edge edge(double expected, Expression formula, double a, double b) {
    return new Edge(expected, new Sample(formula, List.of(a, b)));
  }

  private static List<Edge> divisionsAndOverflows() {
    return List.of(
        edge(NONE, A.over(B), 1, 0),
        edge(NONE, A.over(B), 0, 0),
        edge(NONE, A.over(B), 1, -0.0),
        edge(NONE, ONE.over(A.minus(B)), 3, 3),
        edge(NONE, sqrt(A), -4, 0),
        edge(0, sqrt(A), 0, 0),
        edge(NONE, ln(A), 0, 0),
        edge(NONE, ln(A), -1, 0),
        edge(NONE, exp(A), 800, 0),
        edge(0, exp(A), -800, 0),
        edge(NONE, A.times(A), 1e200, 0),
        edge(NONE, A.pow(2), 1e200, 0),
        edge(NONE, A.over(B), 1e200, 1e-200),
        edge(1, tanh(A), 1000, 0),
        edge(-1, tanh(A), -1000, 0));
  }

  private static List<Edge> powersAndAngles() {
    return List.of(
        edge(-4, A.pow(2).negated(), 2, 0),
        edge(4, A.negated().pow(2), 2, 0),
        edge(-8, A.pow(3), -2, 0),
        edge(-0.125, A.pow(-3), -2, 0),
        edge(0.25, A.pow(-2), -2, 0),
        edge(64, A.pow(2).pow(3), -2, 0),
        edge(NONE, A.pow(-1), 0, 0),
        edge(NONE, A.pow(-0.5), 0, 0),
        edge(0, A.pow(0.5), 0, 0),
        edge(NONE, A.pow(0.5), -4, 0),
        edge(NONE, A.pow(1.5), -4, 0),
        edge(NONE, A.pow(0.2), -32, 0),
        edge(NONE, A.pow(0.333333333333333), -8, 0),
        edge(NONE, A.pow(ONE.over(number(3))), -8, 0),
        edge(NONE, A.pow(B), -2, 3),
        edge(NONE, A.pow(B), -2, 0),
        edge(NONE, A.pow(B), 0, 0),
        edge(NONE, A.pow(B), 0, -1),
        edge(0, A.pow(B), 0, 0.5),
        edge(1, A.pow(B), 5, 0),
        edge(NONE, angleOf(A, B), 0, 0),
        edge(0, angleOf(A, B), 3, 0),
        edge(Math.PI, angleOf(A, B), -3, 0),
        edge(Math.PI, angleOf(A, B), -3, -0.0),
        edge(Math.PI, angleOf(A, B.negated()), -3, 0),
        edge(Math.PI / 2, angleOf(A, B), 0, 3),
        edge(-Math.PI / 2, angleOf(A, B), -0.0, -3));
  }

  /** A missing value may be hidden only by a branch that is not taken. */
  private static List<Edge> missingValuesInUse() {
    Expression missing = ONE.over(A);
    Condition no = less(TWO, ONE);
    return List.of(
        edge(NONE, min(missing, ONE), 0, 0),
        edge(NONE, max(ONE, missing), 0, 0),
        edge(NONE, ONE.over(missing), 0, 0),
        edge(NONE, ONE.pow(missing), 0, 0),
        edge(NONE, tanh(missing), 0, 0),
        edge(NONE, choose(less(missing, ONE), ONE, TWO), 0, 0),
        edge(NONE, choose(not(less(missing, ONE)), ONE, TWO), 0, 0),
        edge(NONE, choose(no.and(less(missing, ONE)), ONE, TWO), 0, 0),
        edge(NONE, choose(not(no).or(less(missing, ONE)), ONE, TWO), 0, 0),
        edge(1, choose(greater(A, ONE), missing, ONE), 0, 0),
        edge(2, choose(atMost(A, ONE), TWO, missing), 0, 0),
        edge(NONE, table(missing), 0, 0));
  }

  private static List<Edge> tiesAndTables() {
    return List.of(
        edge(2, choose(less(A, B), ONE, TWO), 0.1, 0.1),
        edge(1, choose(atMost(A, B), ONE, TWO), 0.1, 0.1),
        edge(2, choose(greater(A, B), ONE, TWO), 0.1, 0.1),
        edge(1, choose(atLeast(A, B), ONE, TWO), 0.1, 0.1),
        edge(2, choose(less(A, B), ONE, TWO), -0.0, 0),
        edge(5, table(A), -1, 0),
        edge(-4, table(A), 2, 0),
        edge(7, table(A), 10, 0),
        edge(2, table(A), 0, 0),
        edge(1.5, table(A), 6, 0),
        edge(NONE, table(A), -1.001, 0),
        edge(NONE, table(A), 10.001, 0));
  }

  private static Expression table(Expression at) {
    return new Interpolation(
        List.of(
            new Interpolation.Row(-1, 5),
            new Interpolation.Row(2, -4),
            new Interpolation.Row(10, 7)),
        at,
        Dimension.NONE,
        Dimension.NONE);
  }

  private static List<Edge> all() {
    List<Edge> all = new ArrayList<>(divisionsAndOverflows());
    all.addAll(powersAndAngles());
    all.addAll(missingValuesInUse());
    all.addAll(tiesAndTables());
    return all;
  }

  @Test
  void javaGivesWhatIsExpected() {
    assertThat(differences(all(), all().stream().map(e -> e.sample().evaluated()).toList()))
        .isEmpty();
  }

  @Test
  void poiGivesWhatIsExpected() {
    try (PoiProgram poi = new PoiProgram()) {
      List<Double> results = all().stream().map(e -> poi.value(e.sample())).toList();
      assertThat(differences(all(), results)).isEmpty();
    }
  }

  @Test
  void calcGivesWhatIsExpected() throws IOException {
    CalcProgram calc = new CalcProgram(CalcEngine.required(), folder);
    List<Double> results = calc.values(all().stream().map(Edge::sample).toList());
    assertThat(differences(all(), results)).isEmpty();
  }

  /** To within 1E-14, for 15 digits in a file; and nothing where nothing is expected. */
  private static List<String> differences(List<Edge> edges, List<Double> results) {
    List<String> differences = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      double expected = edges.get(i).expected();
      double found = results.get(i);
      boolean same =
          Double.isNaN(expected)
              ? Double.isNaN(found)
              : Math.abs(found - expected) <= 1e-14 * Math.max(1, Math.abs(expected));
      if (!same) {
        differences.add(edges.get(i).sample() + ": expected " + expected + ", found " + found);
      }
    }
    return differences;
  }
}
