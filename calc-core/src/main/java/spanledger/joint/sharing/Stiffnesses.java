package spanledger.joint.sharing;

/** What the parts of a joint may be given as. */
final class Stiffnesses {

  private Stiffnesses() {}

  /**
   * @throws IllegalArgumentException unless all are finite and not below zero
   */
  static void require(String what, double... stiffnesses) {
    for (double stiffness : stiffnesses) {
      if (!(stiffness >= 0) || Double.isInfinite(stiffness)) {
        throw new IllegalArgumentException(
            what + ": a stiffness must be zero or more and finite, found " + stiffness + " N/mm.");
      }
    }
  }

  /**
   * @throws IllegalArgumentException unless both are finite
   */
  static void requirePlace(String what, double y, double z) {
    if (!Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(
          what + ": its place must be two finite numbers, found " + y + " and " + z + " mm.");
    }
  }
}
