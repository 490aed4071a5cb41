package spanledger.procedure;

/** Prints formulas with their symbols. */
public final class SymbolicText extends PrintedFormula {

  private SymbolicText() {}

  /** The formula with symbols, for example {@code M_Ed/(W_el · f_o)}. */
  public static String of(Expression expression) {
    return new SymbolicText().write(expression);
  }

  @Override
  String constant(Expression.Constant constant) {
    String unit = constant.dimension().coreUnit();
    String number = NumberText.exact(constant.value());
    return unit.isEmpty() ? number : number + " " + unit;
  }

  @Override
  String reference(Reference reference) {
    return reference.symbol();
  }
}
