package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed chain of edges, each starting where the one before ends.
 *
 * @param edges in order of travel
 */
public record Ring(List<Edge> edges) {

  /**
   * Checks that the chain is closed.
   *
   * @throws InvalidOutlineException naming the place of each gap, repeated point, impossible arc or
   *     number that is not finite
   */
  public Ring {
    edges = List.copyOf(edges);
    List<OutlineFault> faults = RingFaults.of(edges);
    if (!faults.isEmpty()) {
      throw new InvalidOutlineException(faults);
    }
  }

  /** Closed chain of straight edges through the points, back to the first. */
  public static Ring polygon(List<Point> corners) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      edges.add(new StraightEdge(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Ring(edges);
  }

  /** Closed chain of straight edges through the points given as y, z, y, z, ... */
  public static Ring polygon(double... coordinates) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i + 1 < coordinates.length; i += 2) {
      corners.add(new Point(coordinates[i], coordinates[i + 1]));
    }
    return polygon(corners);
  }

  /** A full circle travelled to the left. */
  public static Ring circle(Point centre, double radius) {
    Point right = centre.plus(new Point(radius, 0));
    Point left = centre.minus(new Point(radius, 0));
    return new Ring(List.of(new ArcEdge(right, left, 1), new ArcEdge(left, right, 1)));
  }

  /** Length of the whole chain, mm. */
  public double length() {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  /** Enclosed area, mm²; positive if the ring turns to the left. */
  public double signedArea() {
    return BoundaryIntegrals.about(edges.get(0).start(), edges).area();
  }

  /** The same ring travelled the other way. */
  public Ring reversed() {
    List<Edge> back = new ArrayList<>();
    for (int i = edges.size() - 1; i >= 0; i--) {
      back.add(edges.get(i).reversed());
    }
    return new Ring(back);
  }

  Ring turningLeft(boolean left) {
    return signedArea() > 0 == left ? this : reversed();
  }

  Ring moved(Similarity similarity) {
    return new Ring(edges.stream().map(edge -> edge.moved(similarity)).toList());
  }
}
