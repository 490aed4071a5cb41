package spanledger.section.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ray;

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
      double t = Ray.abreast(edge, other.start());
      if (t > 1e-9 && t < 1 - 1e-9) {
        stops.add(t);
      }
    }
    return stops;
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
      double distance =
          e == number && edge.sweep() == 0 ? -1 : Ray.distance(at, inward, edges.get(e));
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
}
