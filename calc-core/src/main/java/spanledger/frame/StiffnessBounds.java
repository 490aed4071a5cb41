package spanledger.frame;

import spanledger.provenance.Source;

/**
 * The stiffness of a joint or support as far as it is known: between two bounds. A frame is solved
 * with either; what is worse counts.
 *
 * @param lower the least stiffness to be reckoned with; greater than zero; N/mm or N·mm/rad
 * @param upper the greatest; at least the lower, infinite for rigid
 * @param source a test, or who declares it
 */
public record StiffnessBounds(double lower, double upper, Source source) {

  /** Which bound a run takes. */
  public enum Bound {
    LOWER,
    UPPER
  }

  public StiffnessBounds {
    if (!(lower > 0) || Double.isInfinite(lower) || !(upper >= lower)) {
      throw new IllegalArgumentException(
          "A stiffness must lie between a bound above zero and one not below it, found "
              + lower
              + " and "
              + upper
              + ".");
    }
  }

  /** The stiffness of one run. */
  public double at(Bound bound) {
    return bound == Bound.LOWER ? lower : upper;
  }

  /** What holds in one run. */
  public Restraint restraint(Bound bound) {
    double stiffness = at(bound);
    return Double.isInfinite(stiffness) ? Restraint.FIXED : new Restraint.Spring(stiffness);
  }
}
