package spanledger.section.outline;

import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;

/** How thick a section is where no plate tells. */
public final class WallThickness {

  /** A circle in the junction of three equal walls is 1.25 times as wide as they are thick. */
  private static final double JUNCTION = 1.25;

  private WallThickness() {}

  /**
   * An estimate of the thickest wall: the largest circle that fits into the material, less what a
   * junction of walls adds.
   *
   * @return mm, within 20 %
   */
  public static double largest(Outline outline) {
    double accuracy = 1e-4 * outline.size();
    return 2
        * MaximumInscribedCircle.getRadiusLine(OutlineFaults.flattened(outline), accuracy)
            .getLength()
        / JUNCTION;
  }
}
