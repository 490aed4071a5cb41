package spanledger.section.outline;

import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * The neutral axis of full plastic bending about a direction.
 *
 * @param offset its distance to the left of the parallel axis through the centroid, mm
 * @param modulus the plastic section modulus about it, mm³
 */
public record PlasticAxis(double offset, double modulus) {

  private static final int MOST_STEPS = 200;
  private static final CompiledProcedure MODULUS = PlasticModulus.PROCEDURE.compile();

  /**
   * Finds the line that halves the area. Where a gap makes more than one line do so, any of them
   * has the same modulus.
   *
   * @param edges the boundary, material to the left
   * @param area the whole area, mm²
   * @param centroid the centroid, mm
   * @param angle the direction of the axis, to the left of y, rad
   */
  static PlasticAxis of(List<Edge> edges, double area, Point centroid, double angle) {
    Point along = Point.direction(angle);
    Point left = along.quarterTurn();
    Extent extent = Extent.of(edges, left);
    double low = extent.least() - centroid.dot(left);
    double high = extent.greatest() - centroid.dot(left);
    double size = high - low;
    double offset = 0;
    HalfPlane upper = HalfPlane.leftOf(edges, centroid, along);
    for (int i = 0; i < MOST_STEPS && high - low > 1e-15 * size; i++) {
      double excess = upper.area() - area / 2;
      if (Math.abs(excess) <= 1e-15 * area) {
        break;
      }
      if (excess > 0) {
        low = offset;
      } else {
        high = offset;
      }
      double newton = offset + excess / upper.width();
      offset = newton > low && newton < high ? newton : (low + high) / 2;
      upper = HalfPlane.leftOf(edges, centroid.plus(left.times(offset)), along);
    }
    Point through = centroid.plus(left.times(offset));
    List<Edge> pieces =
        HalfBoundary.leftOf(edges, through, along).stream().map(HalfBoundary.Piece::part).toList();
    AreaIntegrals sums = BoundaryIntegrals.about(through, pieces);
    double[] values = MODULUS.run(area, sums.area(), sums.firstY(), sums.firstZ(), angle, offset);
    return new PlasticAxis(offset, values[MODULUS.slot("W_pl")]);
  }
}
