package spanledger.joint.stiffness;

import java.util.List;
import spanledger.joint.stiffness.FittedCurve.Division;
import spanledger.joint.stiffness.MomentRotationCurve.Point;

/**
 * Sums over the readings of a test on which its lines rest.
 *
 * @param rising how many readings rise
 * @param rotations sum of their rotations, rad
 * @param moments sum of their moments, N·mm
 * @param squares sum of the squares of their rotations
 * @param products sum of the products of rotation and moment, N·mm
 * @param held at how many readings the moment is held
 * @param heldMoments sum of their moments, N·mm
 */
public record TestSums(
    int rising,
    double rotations,
    double moments,
    double squares,
    double products,
    int held,
    double heldMoments) {

  /** The sums of readings that are divided so. */
  public static TestSums of(List<Point> points, Division division) {
    double rotations = 0;
    double moments = 0;
    double squares = 0;
    double products = 0;
    for (Point point : points.subList(division.from(), division.to())) {
      rotations += point.rotation();
      moments += point.moment();
      squares += point.rotation() * point.rotation();
      products += point.rotation() * point.moment();
    }
    double heldMoments = 0;
    for (Point point : points.subList(division.to(), points.size())) {
      heldMoments += point.moment();
    }
    return new TestSums(
        division.to() - division.from(),
        rotations,
        moments,
        squares,
        products,
        points.size() - division.to(),
        heldMoments);
  }
}
