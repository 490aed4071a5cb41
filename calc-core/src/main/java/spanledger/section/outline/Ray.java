package spanledger.section.outline;

/** Lines of sight from a point to the boundary. */
public final class Ray {

  private Ray() {}

  /**
   * The distance from a point along a direction to the nearest edge of an outline.
   *
   * @param direction of length 1
   * @return mm; infinite if no edge is met
   */
  public static double toBoundary(Outline outline, Point from, Point direction) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Edge edge : outline.edges()) {
      double distance = distance(from, direction, edge);
      if (distance >= 0 && distance < nearest) {
        nearest = distance;
      }
    }
    return nearest;
  }

  /**
   * The distance from a point along a direction to an edge.
   *
   * @param direction of length 1
   * @return mm; negative if it is missed
   */
  public static double distance(Point from, Point direction, Edge edge) {
    if (edge instanceof ArcEdge arc) {
      return distance(from, direction, arc);
    }
    Point along = edge.end().minus(edge.start());
    double det = direction.cross(along);
    if (det == 0) {
      return -1;
    }
    Point to = edge.start().minus(from);
    double t = to.cross(direction) / det;
    return t < 0 || t > 1 ? -1 : to.cross(along) / det;
  }

  private static double distance(Point from, Point direction, ArcEdge arc) {
    Point to = arc.centre().minus(from);
    double along = to.dot(direction);
    double across = to.cross(direction);
    double square = arc.radius() * arc.radius() - across * across;
    if (square <= 0) {
      return -1;
    }
    double half = Math.sqrt(square);
    double tolerance = 1e-9 * arc.radius();
    for (double distance : new double[] {along - half, along + half}) {
      double t = abreast(arc, from.plus(direction.times(distance)));
      if (distance > tolerance && t >= 0 && t <= 1) {
        return distance;
      }
    }
    return -1;
  }

  /** The fraction of an edge's length that lies abreast of a point; beyond 0 and 1 if none does. */
  public static double abreast(Edge edge, Point point) {
    if (edge instanceof ArcEdge arc) {
      Point spoke = point.minus(arc.centre());
      Point middle = arc.at(0.5).minus(arc.centre());
      double turn = Math.atan2(middle.cross(spoke), middle.dot(spoke));
      return 0.5 + turn / arc.sweep();
    }
    return point.minus(edge.start()).dot(edge.tangent(0)) / edge.length();
  }

  /** How far a point is from the nearest edge of an outline, mm. */
  public static double offBoundary(Outline outline, Point point) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Edge edge : outline.edges()) {
      double t = Math.max(0, Math.min(1, abreast(edge, point)));
      double ends = Math.min(point.distance(edge.start()), point.distance(edge.end()));
      nearest = Math.min(nearest, Math.min(ends, point.distance(edge.at(t))));
    }
    return nearest;
  }
}
