package spanledger.procedure;

/** Prints formulas with their symbols. */
public final class SymbolicText extends PrintedFormula {

  private SymbolicText() {}

  /** The formula with symbols, for example {@code M_Ed/(W_el · f_o)}. */
  public static String of(Expression expression) {
    return new SymbolicText().write(expression);
  }

  /** A unit is a product with its number: {@code x/(5 N/mm)}. */
  @Override
  Part constant(Expression.Constant constant) {
    String unit = constant.dimension().coreUnit();
    Part number = Part.atom(NumberText.exact(constant.value()));
    return unit.isEmpty()
        ? number
        : new Part(number.text() + " " + unit, Math.min(number.binding(), PRODUCT));
  }

  @Override
  String reference(Reference reference) {
    return reference.symbol();
  }
}
