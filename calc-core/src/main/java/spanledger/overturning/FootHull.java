package spanledger.overturning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;

/** The feet of a structure and the lines about which it may tip. */
final class FootHull {

  private FootHull() {}

  /** The nodes that the ground holds up. */
  static List<Node> feet(Frame frame) {
    return frame.supports().stream()
        .filter(s -> !(s.restraint(Freedom.SHIFT_Z) instanceof Restraint.Free))
        .map(Support::node)
        .toList();
  }

  /**
   * The lines of the convex hull of the feet in plan, counter-clockwise seen from above; for feet
   * on one line that line both ways; none for a single foot.
   */
  static List<TippingEdge> edges(List<Node> feet) {
    Map<Coordinate, Node> byPlace = new LinkedHashMap<>();
    for (Node foot : feet) {
      byPlace.putIfAbsent(plan(foot), foot);
    }
    Coordinate[] places = byPlace.keySet().toArray(Coordinate[]::new);
    Coordinate[] hull =
        new ConvexHull(places, new GeometryFactory()).getConvexHull().getCoordinates();
    List<Node> round = new ArrayList<>();
    for (Coordinate corner : hull) {
      Optional.ofNullable(byPlace.get(corner)).ifPresent(round::add);
    }
    if (round.size() < 2) {
      return List.of();
    }
    if (round.size() == 2) {
      return List.of(
          new TippingEdge(round.get(0), round.get(1)), new TippingEdge(round.get(1), round.get(0)));
    }
    boolean counterClockwise = Orientation.isCCW(hull);
    List<TippingEdge> edges = new ArrayList<>();
    for (int i = 0; i + 1 < round.size(); i++) {
      Node from = round.get(i);
      Node to = round.get(i + 1);
      edges.add(counterClockwise ? new TippingEdge(from, to) : new TippingEdge(to, from));
    }
    return edges;
  }

  private static Coordinate plan(Node foot) {
    return new Coordinate(foot.place().x(), foot.place().y());
  }
}
