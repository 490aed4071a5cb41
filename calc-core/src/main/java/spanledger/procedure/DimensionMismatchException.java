package spanledger.procedure;

/** Thrown when a formula is built from quantities that do not fit together. */
public final class DimensionMismatchException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  DimensionMismatchException(String message) {
    super(message);
  }

  static void requireAlike(String verb, Expression left, Expression right) {
    if (!left.dimension().equals(right.dimension())) {
      throw new DimensionMismatchException(
          "Cannot "
              + verb
              + " "
              + SymbolicText.of(left)
              + " ("
              + left.dimension()
              + ") and "
              + SymbolicText.of(right)
              + " ("
              + right.dimension()
              + ").");
    }
  }

  static void requireNumber(String role, Expression expression) {
    if (!expression.dimension().isNone()) {
      throw new DimensionMismatchException(
          SymbolicText.of(expression)
              + " has dimension "
              + expression.dimension()
              + ", but "
              + role
              + " must be a pure number.");
    }
  }
}
