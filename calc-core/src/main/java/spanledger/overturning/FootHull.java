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

  /**
   * The lines about which a structure may tip: of its feet; of one foot, or of feet in one line,
   * those of the corners of their base plates, if all of them have some that are held upright.
   */
  static List<TippingEdge> edges(Frame frame, List<PlateCorner> corners) {
    List<Node> feet = feet(frame);
    List<TippingEdge> ofFeet = edges(feet);
    List<PlateCorner> held =
        corners.stream().filter(corner -> isUpright(frame, corner.foot())).toList();
    boolean all =
        feet.stream().allMatch(foot -> held.stream().anyMatch(c -> c.foot().equals(foot)));
    return ofFeet.size() > 2 || !all
        ? ofFeet
        : edges(held.stream().map(PlateCorner::corner).toList());
  }

  /** Whether the support of a foot keeps it from turning about level axes, as its plate does. */
  private static boolean isUpright(Frame frame, Node foot) {
    return frame.supports().stream()
        .anyMatch(
            s ->
                s.node().equals(foot)
                    && !(s.restraint(Freedom.TURN_X) instanceof Restraint.Free)
                    && !(s.restraint(Freedom.TURN_Y) instanceof Restraint.Free));
  }

  private static Coordinate plan(Node foot) {
    return new Coordinate(foot.place().x(), foot.place().y());
  }
}
