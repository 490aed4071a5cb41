package spanledger.joint;

import spanledger.provenance.Source;

/** How far bolts are tightened. */
public sealed interface Tightening {

  /** Where the numbers come from. */
  Source source();

  /**
   * Preload that is known, in service, within bounds.
   *
   * @param lower N
   * @param upper N
   */
  record Preload(double lower, double upper, Source source) implements Tightening {

    /**
     * @throws IllegalArgumentException if the bounds are not above zero and in order
     */
    public Preload {
      if (!(lower > 0) || !(upper >= lower)) {
        throw new IllegalArgumentException("Preload needs bounds above zero, the lower one first.");
      }
    }
  }

  /**
   * A tightening torque; preload follows from it and from friction, within bounds.
   *
   * @param torque on the nut or head, N·mm
   * @param scatter of the tool, as a part of the torque either way
   * @param lowerFriction in the thread and under the head, least
   * @param upperFriction greatest
   * @param loss part of the preload that is lost after tightening, by settling and by cold
   */
  record Torque(
      double torque,
      double scatter,
      double lowerFriction,
      double upperFriction,
      double loss,
      Source source)
      implements Tightening {

    /** The greatest loss that a job can declare. */
    public static final double MOST_LOSS = 0.99;

    /**
     * @throws IllegalArgumentException if the numbers cannot be
     */
    public Torque {
      if (!(torque > 0)
          || !(scatter >= 0 && scatter < 1)
          || !(lowerFriction > 0)
          || !(upperFriction >= lowerFriction)
          || !(loss >= 0 && loss <= MOST_LOSS)) {
        throw new IllegalArgumentException(
            "A torque needs a size above zero, a scatter and a loss from 0 to below 1, and friction"
                + " bounds above zero, the lower one first.");
      }
    }

    /** A torque after which nothing is declared lost. */
    public Torque(
        double torque, double scatter, double lowerFriction, double upperFriction, Source source) {
      this(torque, scatter, lowerFriction, upperFriction, 0, source);
    }
  }
}
