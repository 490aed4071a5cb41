package spanledger.procedure;

import java.util.function.ToDoubleFunction;

/** Prints formulas with numbers put in for the symbols, to five significant digits. */
public final class NumericText extends PrintedFormula {

  private final ToDoubleFunction<Reference> values;

  private NumericText(ToDoubleFunction<Reference> values) {
    this.values = values;
  }

  /**
   * The formula with numbers.
   *
   * @param values gives the value of each reference, in core units
   */
  public static String of(Expression expression, ToDoubleFunction<Reference> values) {
    return new NumericText(values).write(expression);
  }

  @Override
  Part constant(Expression.Constant constant) {
    return Part.atom(NumberText.exact(constant.value()));
  }

  @Override
  String reference(Reference reference) {
    return NumberText.readable(values.applyAsDouble(reference));
  }
}
