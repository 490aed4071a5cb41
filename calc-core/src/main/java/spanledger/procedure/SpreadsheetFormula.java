package spanledger.procedure;

import java.util.List;
import java.util.function.Function;

/**
 * Writes formulas for spreadsheet cells, without the leading {@code =}, with functions any
 * spreadsheet program knows.
 */
public final class SpreadsheetFormula extends FormulaWriter {

  private final Function<Reference, String> addresses;

  private SpreadsheetFormula(Function<Reference, String> addresses) {
    this.addresses = addresses;
  }

  /**
   * The formula text.
   *
   * @param addresses gives the cell address of each reference, for example {@code Members!$D$7}
   */
  public static String of(Expression expression, Function<Reference, String> addresses) {
    return new SpreadsheetFormula(addresses).write(expression);
  }

  @Override
  String constant(Expression.Constant constant) {
    return NumberText.exact(constant.value());
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
  String function(MathFunction function, List<String> arguments) {
    return function.spreadsheetName() + "(" + String.join(",", arguments) + ")";
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
  String interpolation(Interpolation table, String x) {
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
