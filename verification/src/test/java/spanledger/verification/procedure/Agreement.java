package spanledger.verification.procedure;

import java.util.Optional;

/** Whether a spreadsheet program's result for a sample agrees with the compiled procedure's. */
final class Agreement {

  /**
   * As a share of the scale. Results pass through a file with 15 digits and some tens of roundings;
   * the margin keeps the check silent about the last digits and loud about everything else.
   */
  static final double TOLERANCE = 1e-9;

  private Agreement() {}

  /**
   * The disagreement in words, if any.
   *
   * @param estimate what the sample's value should be near
   * @param result the program's result, NaN for an error value
   */
  static Optional<String> disagreement(Sample sample, Estimate estimate, double result) {
    double evaluated = sample.evaluated();
    if (differ(evaluated, estimate.value(), estimate.scale())) {
      return Optional.of(sample + "\n  compiled: " + evaluated + "\n  walked: " + estimate.value());
    }
    if (differ(evaluated, result, estimate.scale())) {
      return Optional.of(
          sample
              + "\n  compiled: "
              + evaluated
              + "\n  spreadsheet: "
              + result
              + "\n  formula: ="
              + sample.spreadsheetFormula(1)
              + "\n  scale: "
              + estimate.scale());
    }
    return Optional.empty();
  }

  /** Whether one has a value and the other not, or the values are apart. */
  private static boolean differ(double expected, double found, double scale) {
    return (Double.isFinite(expected) && Double.isFinite(found))
        ? Math.abs(expected - found) > TOLERANCE * scale
        : Double.isFinite(expected) != Double.isFinite(found);
  }

  /** How much a comparison to within the scale says about the value. */
  static String sharpness(Estimate estimate) {
    if (estimate.missing()) {
      return "no value";
    }
    return estimate.scale() <= 100 * Math.abs(estimate.value()) ? "sharp" : "blunt";
  }
}
