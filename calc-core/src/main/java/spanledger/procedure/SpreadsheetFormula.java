package spanledger.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Writes formulas for spreadsheet cells, without the leading {@code =}, with functions any
 * spreadsheet program knows.
 *
 * <p>Programs disagree about powers of negative numbers, zero to the power zero, the angle of a
 * null vector and large arguments of tanh. There the formula decides, the same in all of them: see
 * docs/decisions/0001-procedures.md.
 */
public final class SpreadsheetFormula extends FormulaWriter {

  /** Spreadsheets take no longer formula. From memory, confirm. */
  private static final int LONGEST = 8192;

  /** From here on tanh is 1 to the last digit of a double. */
  private static final String TANH_IS_ONE = "20";

  private final Function<Reference, String> addresses;

  private SpreadsheetFormula(Function<Reference, String> addresses) {
    this.addresses = addresses;
  }

  /**
   * The formula text.
   *
   * @param addresses gives the cell address of each reference, for example {@code Members!$D$7}
   * @throws IllegalArgumentException if the text is longer than spreadsheets allow
   */
  public static String of(Expression expression, Function<Reference, String> addresses) {
    String text = new SpreadsheetFormula(addresses).write(expression);
    if (text.length() > LONGEST) {
      throw new IllegalArgumentException(
          "A formula of "
              + text.length()
              + " characters is too long for a spreadsheet cell, which takes "
              + LONGEST
              + ": "
              + text.substring(0, 60)
              + "... Split the step.");
    }
    return text;
  }

  @Override
  Part constant(Expression.Constant constant) {
    return Part.atom(NumberText.exact(constant.value()));
  }

  @Override
  String pi() {
    return "PI()";
  }

  @Override
  String reference(Reference reference) {
    return addresses.apply(reference);
  }

  @Override
  String times() {
    return "*";
  }

  @Override
  Part call(MathFunction function, List<Part> arguments) {
    String x = arguments.get(0).in(SUM);
    String inside = arguments.stream().map(Part::text).collect(Collectors.joining(","));
    String call = function.spreadsheetName() + "(" + inside + ")";
    return Part.atom(
        switch (function) {
          case ATAN2 -> angle(x, arguments.get(1).in(SUM), call);
          case TANH -> saturated(x, call);
          case SQRT, ABS, SIN, COS, TAN, ATAN, EXP, LN -> call;
        });
  }

  /** On the x axis programs tell zero from negative zero, and give the null vector an angle. */
  private static String angle(String x, String y, String call) {
    return "IF(" + y + "=0,IF(" + x + ">0,0,IF(" + x + "<0,PI(),NA()))," + call + ")";
  }

  /** Some programs overflow inside tanh. */
  private static String saturated(String x, String call) {
    String below = "IF(" + x + "<-" + TANH_IS_ONE + ",-1," + call + ")";
    return "IF(" + x + ">" + TANH_IS_ONE + ",1," + below + ")";
  }

  /** Outside the domain of {@link Expression.Power} programs give a root, or one, or an error. */
  @Override
  Part power(Expression.Power power, Part base, Part exponent) {
    Part plain = super.power(power, base, exponent);
    boolean variable = !(power.exponent() instanceof Expression.Constant);
    boolean whole = power.exponent() instanceof Expression.Constant e && e.value() % 1 == 0;
    List<String> outside = new ArrayList<>();
    if (!whole && !Sign.neverNegative(power.base())) {
      outside.add(base.in(SUM) + "<0");
    }
    if (variable && !Sign.alwaysPositive(power.base()) && !Sign.alwaysPositive(power.exponent())) {
      outside.add("AND(" + base.in(SUM) + "=0," + exponent.in(SUM) + "<=0)");
    }
    if (outside.isEmpty()) {
      return plain;
    }
    String condition =
        outside.size() == 1 ? outside.get(0) : "OR(" + String.join(",", outside) + ")";
    return Part.atom("IF(" + condition + ",NA()," + plain.text() + ")");
  }

  @Override
  String extreme(boolean largest, List<String> operands) {
    return (largest ? "MAX(" : "MIN(") + String.join(",", operands) + ")";
  }

  @Override
  String choice(String condition, String whenTrue, String whenFalse) {
    return "IF(" + condition + "," + whenTrue + "," + whenFalse + ")";
  }

  @Override
  String interpolation(Interpolation table, Part argument) {
    String x = argument.in(ATOM);
    List<Interpolation.Row> rows = table.rows();
    String text = "NA()";
    for (int i = rows.size() - 1; i > 0; i--) {
      Interpolation.Row low = rows.get(i - 1);
      Interpolation.Row high = rows.get(i);
      String piece =
          signed(low.value())
              + "+("
              + x
              + "-"
              + signed(low.at())
              + ")*("
              + signed(high.value())
              + "-"
              + signed(low.value())
              + ")/("
              + signed(high.at())
              + "-"
              + signed(low.at())
              + ")";
      text = "IF(" + x + "<=" + signed(high.at()) + "," + piece + "," + text + ")";
    }
    return "IF(" + x + "<" + signed(rows.get(0).at()) + ",NA()," + text + ")";
  }

  private static String signed(double value) {
    return value < 0 ? "(" + NumberText.exact(value) + ")" : NumberText.exact(value);
  }

  @Override
  String relation(Condition.Relation relation) {
    return relation.sign();
  }

  @Override
  String both(String first, String second) {
    return "AND(" + first + "," + second + ")";
  }

  @Override
  String either(String first, String second) {
    return "OR(" + first + "," + second + ")";
  }

  @Override
  String not(String operand) {
    return "NOT(" + operand + ")";
  }
}
