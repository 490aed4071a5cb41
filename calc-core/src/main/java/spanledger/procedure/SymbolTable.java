package spanledger.procedure;

import java.util.HashMap;
import java.util.Map;

/** The symbols defined so far in a procedure; refuses what does not fit. */
final class SymbolTable {

  private final String procedure;
  private final Map<String, Reference> known = new HashMap<>();

  SymbolTable(String procedure) {
    if (procedure.isEmpty() || procedure.chars().anyMatch(Character::isWhitespace)) {
      throw new IllegalArgumentException(
          "The name of a procedure must be without spaces and not empty, found \""
              + procedure
              + "\".");
    }
    this.procedure = procedure;
  }

  void define(Input input) {
    remember(input.symbol());
  }

  void define(Step step) {
    Expression formula = step.expression();
    if (!formula.dimension().equals(step.symbol().dimension())) {
      throw new DimensionMismatchException(
          "Step "
              + step.symbol().symbol()
              + " of "
              + procedure
              + " should be in "
              + step.symbol().dimension()
              + ", but its formula "
              + SymbolicText.of(formula)
              + " is in "
              + formula.dimension()
              + ".");
    }
    for (Reference used : References.of(formula)) {
      requireKnown(used, step);
    }
    remember(step.symbol());
  }

  private void requireKnown(Reference used, Step step) {
    Reference defined = known.get(used.symbol());
    if (defined == null) {
      throw new IllegalArgumentException(
          "Step "
              + step.symbol().symbol()
              + " of "
              + procedure
              + " uses "
              + used.symbol()
              + ", which is not defined before it.");
    }
    if (!defined.equals(used)) {
      throw new DimensionMismatchException(
          "Step "
              + step.symbol().symbol()
              + " of "
              + procedure
              + " uses "
              + used.symbol()
              + " in "
              + used.dimension()
              + ", but it is defined in "
              + defined.dimension()
              + ".");
    }
  }

  private void remember(Reference symbol) {
    if (symbol.symbol().isBlank()) {
      throw new IllegalArgumentException("Procedure " + procedure + " has an empty symbol.");
    }
    if (known.putIfAbsent(symbol.symbol(), symbol) != null) {
      throw new IllegalArgumentException(
          "Procedure " + procedure + " defines " + symbol.symbol() + " twice.");
    }
  }
}
