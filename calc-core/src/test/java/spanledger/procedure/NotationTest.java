package spanledger.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.not;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;
import static spanledger.procedure.Formulas.tanh;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.quantity.Dimension;

/**
 * The three notations, and that their brackets say what the formula means: symbols, numbers put in
 * (a = -1.5, b = 2, c = 12345678), and spreadsheet with a, b, c in A1, B1, C1.
 */
class NotationTest {

  private static final Reference A = new Reference("a", Dimension.NONE);
  private static final Reference B = new Reference("b", Dimension.NONE);
  private static final Reference C = new Reference("c", Dimension.NONE);

  /** One formula in its three notations. */
  record Notation(Expression formula, String symbols, String numbers, String spreadsheet) {
    @Override
    public String toString() {
      return symbols;
    }
  }

  static List<Notation> operators() {
    return List.of(
        of(A.pow(2).negated(), "-(a^2)", "-((-1.5)^2)", "-(A1^2)"),
        of(A.negated().pow(2), "(-a)^2", "(-(-1.5))^2", "(-A1)^2"),
        of(A.negated().negated(), "-(-a)", "-(-(-1.5))", "-(-A1)"),
        of(A.minus(B.minus(C)), "a-(b-c)", "(-1.5)-(2-1.2346E7)", "A1-(B1-C1)"),
        of(A.minus(B).minus(C), "a-b-c", "(-1.5)-2-1.2346E7", "A1-B1-C1"),
        of(A.plus(B.plus(C)), "a+(b+c)", "(-1.5)+(2+1.2346E7)", "A1+(B1+C1)"),
        of(A.over(B.times(C)), "a/(b · c)", "(-1.5)/(2 · 1.2346E7)", "A1/(B1*C1)"),
        of(A.over(B).times(C), "a/b · c", "(-1.5)/2 · 1.2346E7", "A1/B1*C1"),
        of(A.over(B.over(C)), "a/(b/c)", "(-1.5)/(2/1.2346E7)", "A1/(B1/C1)"),
        of(A.times(B.plus(C)), "a · (b+c)", "(-1.5) · (2+1.2346E7)", "A1*(B1+C1)"),
        of(B.minus(A), "b-a", "2-(-1.5)", "B1-A1"),
        of(B.plus(A.negated()), "b+(-a)", "2+(-(-1.5))", "B1+(-A1)"),
        of(A.negated().plus(B), "(-a)+b", "(-(-1.5))+2", "(-A1)+B1"),
        of(A.plus(B).negated(), "-(a+b)", "-((-1.5)+2)", "-(A1+B1)"),
        of(A.pow(2).pow(3), "(a^2)^3", "((-1.5)^2)^3", "(A1^2)^3"),
        of(A.plus(B).pow(-2), "(a+b)^(-2)", "((-1.5)+2)^(-2)", "(A1+B1)^(-2)"),
        of(B.minus(A.pow(2)), "b-a^2", "2-(-1.5)^2", "B1-A1^2"),
        of(B.times(number(-3)), "b · (-3)", "2 · (-3)", "B1*(-3)"),
        of(number(-3).times(B), "(-3) · b", "(-3) · 2", "(-3)*B1"),
        of(number(-3).plus(B), "(-3)+b", "(-3)+2", "(-3)+B1"),
        of(number(-3).pow(2), "(-3)^2", "(-3)^2", "(-3)^2"),
        of(number(-3).negated(), "-(-3)", "-(-3)", "-(-3)"),
        of(pi().times(2), "2 · π", "2 · π", "2*PI()"));
  }

  static List<Notation> functionsAndChoices() {
    return List.of(
        of(abs(A.negated()), "abs(-a)", "abs(-(-1.5))", "ABS(-A1)"),
        of(sqrt(A.times(B)), "√(a · b)", "√((-1.5) · 2)", "SQRT(A1*B1)"),
        of(
            max(A, number(-3), B.plus(C)),
            "max(a; -3; b+c)",
            "max(-1.5; -3; 2+1.2346E7)",
            "MAX(A1,-3,B1+C1)"),
        of(min(A, B).times(C), "min(a; b) · c", "min(-1.5; 2) · 1.2346E7", "MIN(A1,B1)*C1"),
        of(
            choose(
                atMost(A.plus(B), C).and(not(greater(A, B))).or(atLeast(A, number(0))),
                A.negated(),
                B.plus(C)),
            "[if ((a+b ≤ c and not (a > b)) or a ≥ 0) then -a else b+c]",
            "[if (((-1.5)+2 ≤ 1.2346E7 and not ((-1.5) > 2)) or (-1.5) ≥ 0)"
                + " then -(-1.5) else 2+1.2346E7]",
            "IF(OR(AND(A1+B1<=C1,NOT(A1>B1)),A1>=0),-A1,B1+C1)"),
        of(
            choose(less(A, B), A, B).pow(2),
            "[if a < b then a else b]^2",
            "[if (-1.5) < 2 then -1.5 else 2]^2",
            "IF(A1<B1,A1,B1)^2"),
        of(
            new Interpolation(
                List.of(new Interpolation.Row(-1, 5), new Interpolation.Row(2, -4)),
                A.minus(B),
                Dimension.NONE,
                Dimension.NONE),
            "table(a-b)",
            "table((-1.5)-2)",
            "IF((A1-B1)<(-1),NA(),IF((A1-B1)<=2," + "5+((A1-B1)-(-1))*((-4)-5)/(2-(-1)),NA()))"));
  }

  /** Where programs disagree the formula itself decides: docs/decisions/0001-procedures.md. */
  static List<Notation> guardedFormulas() {
    return List.of(
        of(A.pow(0.5), "a^0.5", "(-1.5)^0.5", "IF(A1<0,NA(),A1^0.5)"),
        of(A.pow(-0.5).pow(2), "(a^(-0.5))^2", "((-1.5)^(-0.5))^2", "IF(A1<0,NA(),A1^(-0.5))^2"),
        of(
            A.pow(2).plus(B.pow(4)).pow(0.3),
            "(a^2+b^4)^0.3",
            "((-1.5)^2+2^4)^0.3",
            "(A1^2+B1^4)^0.3"),
        of(A.pow(3).pow(0.3), "(a^3)^0.3", "((-1.5)^3)^0.3", "IF(A1^3<0,NA(),(A1^3)^0.3)"),
        of(number(2).pow(A), "2^a", "2^(-1.5)", "2^A1"),
        of(B.pow(A), "b^a", "2^(-1.5)", "IF(OR(B1<0,AND(B1=0,A1<=0)),NA(),B1^A1)"),
        of(abs(B).pow(A), "abs(b)^a", "abs(2)^(-1.5)", "IF(AND(ABS(B1)=0,A1<=0),NA(),ABS(B1)^A1)"),
        of(B.pow(max(A, number(1))), "b^max(a; 1)", "2^max(-1.5; 1)", "IF(B1<0,NA(),B1^MAX(A1,1))"),
        of(tanh(A), "tanh(a)", "tanh(-1.5)", "IF(A1>20,1,IF(A1<-20,-1,TANH(A1)))"),
        of(
            angleOf(A, B),
            "atan2(a; b)",
            "atan2(-1.5; 2)",
            "IF(B1=0,IF(A1>0,0,IF(A1<0,PI(),NA())),ATAN2(A1,B1))"));
  }

  @ParameterizedTest
  @MethodSource({"operators", "functionsAndChoices", "guardedFormulas"})
  void areWrittenAsTheyAreMeant(Notation expected) {
    assertThat(SymbolicText.of(expected.formula())).isEqualTo(expected.symbols());
    assertThat(NumericText.of(expected.formula(), NotationTest::value))
        .isEqualTo(expected.numbers());
    assertThat(SpreadsheetFormula.of(expected.formula(), NotationTest::cell))
        .isEqualTo(expected.spreadsheet());
  }

  @Test
  void constantsCarryTheirUnitInSymbolsOnly() {
    Reference load = new Reference("F", Dimension.FORCE);
    Expression stiffness = constant(5, Dimension.LINE_LOAD);

    assertThat(SymbolicText.of(load.over(stiffness))).isEqualTo("F/(5 N/mm)");
    assertThat(SymbolicText.of(stiffness.pow(2))).isEqualTo("(5 N/mm)^2");
    assertThat(SymbolicText.of(stiffness.plus(constant(-1, Dimension.LINE_LOAD))))
        .isEqualTo("5 N/mm+(-1 N/mm)");
    assertThat(SpreadsheetFormula.of(load.over(stiffness), r -> "A1")).isEqualTo("A1/5");
  }

  @Test
  void numbersArePrintedToFiveDigits() {
    assertThat(printed(0)).isEqualTo("0");
    assertThat(printed(-0.0)).isEqualTo("0");
    assertThat(printed(1234567)).isEqualTo("1234600");
    assertThat(printed(9_999_999)).isEqualTo("1E7");
    assertThat(printed(0.001)).isEqualTo("0.001");
    assertThat(printed(0.00099999949)).isEqualTo("0.001");
    assertThat(printed(-0.000123456)).isEqualTo("-1.2346E-4");
    assertThat(printed(Double.NaN)).isEqualTo("NaN");
  }

  @Test
  void addressesAreTakenAsTheyCome() {
    assertThat(SpreadsheetFormula.of(A.times(B), r -> "'End forces'!$" + r.symbol() + "$7"))
        .isEqualTo("'End forces'!$a$7*'End forces'!$b$7");
  }

  @Test
  void aFormulaTooLongForACellIsRefused() {
    Expression sum = A;
    for (int i = 1; i < 100; i++) {
      sum = sum.plus(A);
    }
    Expression tooLong = sum;
    String address = "'" + "Long".repeat(20) + "'!A1";
    assertThatThrownBy(() -> SpreadsheetFormula.of(tooLong, r -> address))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(
            "A formula of 8599 characters is too long for a spreadsheet cell, which takes 8192: ")
        .hasMessageEndingWith("... Split the step.");
  }

  /** German writes 1,5 and Turkish has its own i; formulas must not. */
  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"})
  void doNotDependOnTheLocale(String locale) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      operators().forEach(this::areWrittenAsTheyAreMeant);
      functionsAndChoices().forEach(this::areWrittenAsTheyAreMeant);
      guardedFormulas().forEach(this::areWrittenAsTheyAreMeant);
      numbersArePrintedToFiveDigits();
      assertThat(new Domain(0.5, true, 1234.5).words())
          .isEqualTo("at least 0.5 and at most 1234.5");
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String printed(double value) {
    return NumericText.of(A, r -> value);
  }

  private static double value(Reference reference) {
    return switch (reference.symbol()) {
      case "a" -> -1.5;
      case "b" -> 2;
      default -> 12_345_678;
    };
  }

  private static String cell(Reference reference) {
    return reference.symbol().toUpperCase(Locale.ROOT) + "1";
  }

  private static Notation of(
      Expression formula, String symbols, String numbers, String spreadsheet) {
    return new Notation(formula, symbols, numbers, spreadsheet);
  }
}
