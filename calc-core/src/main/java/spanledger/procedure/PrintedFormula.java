package spanledger.procedure;

import java.util.List;

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
  String function(MathFunction function, List<String> arguments) {
    return function.printedName() + "(" + String.join("; ", arguments) + ")";
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
  String interpolation(Interpolation table, String argument) {
    return "table(" + argument + ")";
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
