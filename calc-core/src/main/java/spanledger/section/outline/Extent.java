package spanledger.section.outline;

import java.util.List;

/**
 * How far an outline reaches in a direction, arcs included exactly.
 *
 * @param least the least coordinate in the direction, mm
 * @param greatest the greatest coordinate in the direction, mm
 */
public record Extent(double least, double greatest) {

  /**
   * The extent of edges.
   *
   * @param edges at least one
   * @param direction of length 1
   */
  public static Extent of(List<Edge> edges, Point direction) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Edge edge : edges) {
      double start = edge.start().dot(direction);
      least = Math.min(least, start);
      greatest = Math.max(greatest, start);
      if (edge instanceof ArcEdge arc) {
        double centre = arc.centre().dot(direction);
        if (reaches(arc, direction)) {
          greatest = Math.max(greatest, centre + arc.radius());
        }
        if (reaches(arc, direction.times(-1))) {
          least = Math.min(least, centre - arc.radius());
        }
      }
    }
    return new Extent(least, greatest);
  }

  /** Whether the arc passes the point of its circle that lies in the direction from the centre. */
  private static boolean reaches(ArcEdge arc, Point direction) {
    Point outwardAtMiddle = arc.tangent(0.5).quarterTurn().times(-Math.signum(arc.bulge()));
    double angle = Math.acos(Math.max(-1, Math.min(1, outwardAtMiddle.dot(direction))));
    return angle <= Math.abs(arc.sweep()) / 2;
  }
}
