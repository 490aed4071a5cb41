package spanledger.state;

/**
 * How states are solved.
 *
 * @param secondOrder whether axial forces bend and soften members, and act on the moved frame
 * @param tolerance force left over at a node, per sum of all loads, at which a solution counts
 * @param mostRounds rounds of equilibrium in one state of joints and supports, at most
 */
public record StateOptions(boolean secondOrder, double tolerance, int mostRounds) {

  /** Forces left over at nodes that rounding explains, per sum of all loads. */
  public static final double USUAL_TOLERANCE = 1e-9;

  /** First order: equilibrium of the frame at rest. */
  public static final StateOptions FIRST_ORDER = new StateOptions(false, USUAL_TOLERANCE, 20);

  /** Second order. */
  public static final StateOptions SECOND_ORDER = new StateOptions(true, USUAL_TOLERANCE, 60);

  public StateOptions {
    if (!(tolerance > 0) || mostRounds < 1) {
      throw new IllegalArgumentException(
          "A tolerance above zero and at least one round are needed, found "
              + tolerance
              + " and "
              + mostRounds
              + ".");
    }
  }
}
