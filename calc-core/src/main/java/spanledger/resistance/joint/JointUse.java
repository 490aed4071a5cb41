package spanledger.resistance.joint;

/**
 * A step of a joint check that says how much of a resistance is used; at most 1 passes.
 *
 * @param symbol of the step, for example {@code η_v}
 * @param words what is checked, for example {@code bolt in shear}
 * @param clause where the resistance comes from, for example {@code EN 1999-1-1, Table 8.5}
 * @param demand symbol of what is asked, in the same procedure
 * @param capacity symbol of what may be asked, in the same procedure
 */
public record JointUse(
    String symbol, String words, String clause, String demand, String capacity) {}
