package spanledger.resistance.member;

/**
 * A step of a check that says how much of a resistance is used; at most 1 passes.
 *
 * @param symbol of the step
 * @param words what is checked, for example {@code flexural buckling about z}
 * @param clause of the code, for example {@code 6.3.1.1}; empty for a declared resistance
 */
public record Use(String symbol, String words, String clause) {}
