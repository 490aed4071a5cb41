package spanledger.resistance;

import spanledger.action.RuleSet;

/**
 * The factors between the alloy's proof strength and the design strength.
 *
 * @param factor φ, multiplies
 * @param divisor γ, divides
 */
public record ResistanceFactors(double factor, double divisor) {

  /**
   * Those of a rule set; one that is not given is 1.
   *
   * @throws IllegalArgumentException if the rule set gives neither
   */
  public static ResistanceFactors of(RuleSet rules) {
    var factor = rules.find(RuleSet.RESISTANCE_FACTOR);
    var divisor = rules.find(RuleSet.RESISTANCE_DIVISOR);
    if (factor.isEmpty() && divisor.isEmpty()) {
      throw new IllegalArgumentException(
          "Rule set "
              + rules.id()
              + " gives neither "
              + RuleSet.RESISTANCE_FACTOR
              + " nor "
              + RuleSet.RESISTANCE_DIVISOR
              + ".");
    }
    return new ResistanceFactors(
        factor.map(f -> f.value()).orElse(1.0), divisor.map(f -> f.value()).orElse(1.0));
  }
}
