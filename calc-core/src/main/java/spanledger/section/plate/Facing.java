package spanledger.section.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;

/** Finds which edge each part of the boundary faces through the material. */
final class Facing {

  /** Faces may lean towards each other by this much and still bound one plate, rad. */
  private static final double LARGEST_TAPER = Math.toRadians(10);

  /** A plate is longer than thick; shorter pairs of faces are blocks or ends. */
  private static final double LEAST_LENGTH = 1.2;

  private final List<Edge> edges;

  Facing(List<Edge> edges) {
    this.edges = edges;
  }

  /** The stretches of an edge that are faces of plates, in order. */
  List<Stretch> stretchesOf(int number) {
    Edge edge = edges.get(number);
    List<Double> stops = new ArrayList<>(stops(edge));
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < stops.size(); i++) {
      double from = stops.get(i);
      double to = stops.get(i + 1);
      Stretch found = facing(number, from, to);
      if (found == null) {
        continue;
      }
      Stretch last = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
      if (last != null && last.opposite() == found.opposite() && last.to() == from) {
        stretches.set(stretches.size() - 1, last.joined(found));
      } else {
        stretches.add(found);
      }
    }
    stretches.removeIf(s -> s.length(edge) < LEAST_LENGTH * s.thickness());
    return stretches;
  }

  /** Fractions of the edge where what it faces may change: abreast of the ends of all edges. */
  private SortedSet<Double> stops(Edge edge) {
    SortedSet<Double> stops = new TreeSet<>(List.of(0.0, 1.0));
    for (Edge other : edges) {
      double t = abreast(edge, other.start());
      if (t > 1e-9 && t < 1 - 1e-9) {
        stops.add(t);
      }
    }
    return stops;
  }

  private static double abreast(Edge edge, Point point) {
    if (edge instanceof ArcEdge arc) {
      Point spoke = point.minus(arc.centre());
      Point middle = arc.at(0.5).minus(arc.centre());
      double turn = Math.atan2(middle.cross(spoke), middle.dot(spoke));
      return 0.5 + turn / arc.sweep();
    }
    return point.minus(edge.start()).dot(edge.tangent(0)) / edge.length();
  }

  /** What the part between two stops faces, if both bound a plate. */
  private @Nullable Stretch facing(int number, double from, double to) {
    Edge edge = edges.get(number);
    double middle = (from + to) / 2;
    Point at = edge.at(middle);
    Point inward = edge.tangent(middle).quarterTurn();
    int hit = -1;
    double nearest = Double.POSITIVE_INFINITY;
    for (int e = 0; e < edges.size(); e++) {
      double distance = e == number && edge.sweep() == 0 ? -1 : distance(at, inward, edges.get(e));
      if (distance > 1e-9 * edge.length() && distance < nearest) {
        nearest = distance;
        hit = e;
      }
    }
    if (hit < 0 || hit == number || !bounds(edge, edges.get(hit), nearest)) {
      return null;
    }
    return new Stretch(number, from, to, hit, nearest);
  }

  /** Whether both edges bound a plate: nearly parallel, or concentric. */
  private static boolean bounds(Edge one, Edge other, double distance) {
    if (one instanceof ArcEdge a && other instanceof ArcEdge b) {
      return a.centre().distance(b.centre()) < 0.1 * distance && a.bulge() * b.bulge() < 0;
    }
    return one.sweep() == 0
        && other.sweep() == 0
        && one.tangent(0).dot(other.tangent(0)) < -Math.cos(LARGEST_TAPER);
  }

  /** The distance from a point along a direction to an edge; negative if it is missed. */
  private static double distance(Point from, Point direction, Edge edge) {
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
}
