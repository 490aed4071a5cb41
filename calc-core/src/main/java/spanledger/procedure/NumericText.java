package spanledger.procedure;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Prints formulas with numbers put in for the symbols, to five significant digits. */
public final class NumericText extends PrintedFormula {

  private final Function<Reference, String> numbers;

  private NumericText(Function<Reference, String> numbers) {
    this.numbers = numbers;
  }

  /**
   * The formula with numbers.
   *
   * @param values gives the value of each reference, in core units
   */
  public static String of(Expression expression, ToDoubleFunction<Reference> values) {
    return with(expression, r -> NumberText.readable(values.applyAsDouble(r)));
  }

  /**
   * The formula with the numbers written by the caller, for example as gaps to be filled later.
   *
   * @param numbers gives the text of each reference; negative numbers need brackets of their own if
   *     the text does not begin with a minus sign
   */
  public static String with(Expression expression, Function<Reference, String> numbers) {
    return new NumericText(numbers).write(expression);
  }

  @Override
  Part constant(Expression.Constant constant) {
    return Part.atom(NumberText.exact(constant.value()));
  }

  @Override
  String reference(Reference reference) {
    return numbers.apply(reference);
  }
}
