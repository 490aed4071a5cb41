package spanledger.procedure;

import java.util.List;
import java.util.stream.Collectors;

/** What symbolic and numeric printing have in common. */
abstract class PrintedFormula extends FormulaWriter {

  @Override
  String pi() {
    return "π";
  }

  @Override
  String times() {
    return " · ";
  }

  @Override
  Part call(MathFunction function, List<Part> arguments) {
    String inside = arguments.stream().map(Part::text).collect(Collectors.joining("; "));
    return Part.atom(function.printedName() + "(" + inside + ")");
  }

  @Override
  String extreme(boolean largest, List<String> operands) {
    return (largest ? "max(" : "min(") + String.join("; ", operands) + ")";
  }

  @Override
  String choice(String condition, String whenTrue, String whenFalse) {
    return "[if " + condition + " then " + whenTrue + " else " + whenFalse + "]";
  }

  @Override
  String interpolation(Interpolation table, Part argument) {
    return "table(" + argument.text() + ")";
  }

  @Override
  String relation(Condition.Relation relation) {
    return switch (relation) {
      case LESS -> " < ";
      case LESS_OR_EQUAL -> " ≤ ";
      case GREATER -> " > ";
      case GREATER_OR_EQUAL -> " ≥ ";
    };
  }

  @Override
  String both(String first, String second) {
    return "(" + first + " and " + second + ")";
  }

  @Override
  String either(String first, String second) {
    return "(" + first + " or " + second + ")";
  }

  @Override
  String not(String operand) {
    return "not (" + operand + ")";
  }
}
