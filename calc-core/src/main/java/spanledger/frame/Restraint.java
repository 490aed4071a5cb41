package spanledger.frame;

/** What holds one freedom: of a node at its support, or of a member end against its node. */
public sealed interface Restraint {

  /** Held completely. */
  record Fixed() implements Restraint {}

  /** Not held at all. */
  record Free() implements Restraint {}

  /**
   * Held by a linear spring.
   *
   * @param stiffness greater than zero; N/mm for shifts, N·mm/rad for turns
   */
  record Spring(double stiffness) implements Restraint {
    public Spring {
      if (!(stiffness > 0) || Double.isInfinite(stiffness)) {
        throw new IllegalArgumentException(
            "A spring stiffness must be greater than zero, found " + stiffness + ".");
      }
    }
  }

  /** Held completely. */
  Restraint FIXED = new Fixed();

  /** Not held. */
  Restraint FREE = new Free();
}
