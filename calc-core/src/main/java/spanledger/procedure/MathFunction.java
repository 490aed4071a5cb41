package spanledger.procedure;

import java.util.List;
import spanledger.quantity.Dimension;

/** The functions a formula may use; each exists under one name in every spreadsheet program. */
public enum MathFunction {
  SQRT("SQRT", "√", 1, Rule.ROOT),
  ABS("ABS", "abs", 1, Rule.KEEPS),
  SIN("SIN", "sin", 1, Rule.NUMBER),
  COS("COS", "cos", 1, Rule.NUMBER),
  TAN("TAN", "tan", 1, Rule.NUMBER),
  ATAN("ATAN", "atan", 1, Rule.NUMBER),
  /** The angle whose tangent is second/first, with the quadrant: arguments are x, then y. */
  ATAN2("ATAN2", "atan2", 2, Rule.ANGLE_OF),
  EXP("EXP", "exp", 1, Rule.NUMBER),
  LN("LN", "ln", 1, Rule.NUMBER),
  TANH("TANH", "tanh", 1, Rule.NUMBER);

  private enum Rule {
    ROOT,
    KEEPS,
    NUMBER,
    ANGLE_OF
  }

  private final String spreadsheetName;
  private final String printedName;
  private final int arity;
  private final Rule rule;

  MathFunction(String spreadsheetName, String printedName, int arity, Rule rule) {
    this.spreadsheetName = spreadsheetName;
    this.printedName = printedName;
    this.arity = arity;
    this.rule = rule;
  }

  /** The name in a spreadsheet formula. */
  public String spreadsheetName() {
    return spreadsheetName;
  }

  /** The name in printed formulas. */
  public String printedName() {
    return printedName;
  }

  void requireFitting(List<Expression> arguments) {
    if (arguments.size() != arity) {
      throw new IllegalArgumentException(
          printedName + " takes " + arity + " argument(s), found " + arguments.size() + ".");
    }
    if (rule == Rule.NUMBER) {
      DimensionMismatchException.requireNumber("the argument of " + printedName, arguments.get(0));
    } else if (rule == Rule.ANGLE_OF) {
      DimensionMismatchException.requireAlike(
          "take the angle of", arguments.get(0), arguments.get(1));
    } else if (rule == Rule.ROOT) {
      dimensionOf(arguments);
    }
  }

  Dimension dimensionOf(List<Expression> arguments) {
    Dimension first = arguments.get(0).dimension();
    return switch (rule) {
      case ROOT -> first.power(0.5);
      case KEEPS -> first;
      case NUMBER, ANGLE_OF -> Dimension.NONE;
    };
  }
}
