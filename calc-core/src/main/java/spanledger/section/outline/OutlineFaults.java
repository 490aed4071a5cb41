package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * What is wrong with rings together.
 *
 * <p>For these tests only, arcs are replaced by chords of at most {@link #CHORD_TURN}, which stray
 * from the arc by at most 0.05 % of its radius.
 */
final class OutlineFaults {

  /**
   * The turn of a chord that stands in for a piece of an arc, rad: sagitta r(1 − cos(turn/2)) =
   * 0.0005 r.
   */
  private static final double CHORD_TURN = 2 * Math.acos(1 - 0.0005);

  /** Walls thinner than this part of the section are taken as no wall at all. */
  private static final double NO_WALL = 1e-6;

  private OutlineFaults() {}

  static List<OutlineFault> of(Ring outer, List<Ring> holes) {
    List<OutlineFault> faults = new ArrayList<>();
    GeometryFactory factory = new GeometryFactory();
    Polygon outside = factory.createPolygon(flattened(outer, factory));
    addCrossings(outside, "the outer ring", 0, faults);
    List<Polygon> inside = new ArrayList<>();
    for (int h = 0; h < holes.size(); h++) {
      Polygon hole = factory.createPolygon(flattened(holes.get(h), factory));
      addCrossings(hole, "hole " + (h + 1), h + 1, faults);
      inside.add(hole);
    }
    if (!faults.isEmpty()) {
      return faults;
    }
    double noWall = NO_WALL * Outline.sizeOf(outer);
    for (int h = 0; h < inside.size(); h++) {
      Polygon hole = inside.get(h);
      String name = "hole " + (h + 1);
      if (!outside.contains(hole)) {
        faults.add(
            new OutlineFault(
                placeOutside(hole, outside),
                name + " reaches outside the outer ring. Move it inside, or draw it as a notch.",
                h + 1));
      } else {
        addTouch(
            outside.getExteriorRing(), hole, "the outer ring and " + name, noWall, h + 1, faults);
      }
      for (int g = 0; g < h; g++) {
        String both = "hole " + (g + 1) + " and " + name;
        if (inside.get(g).intersects(hole) && !touchesOnly(inside.get(g), hole)) {
          faults.add(
              new OutlineFault(
                  point(inside.get(g).intersection(hole).getCoordinate()),
                  both + " overlap. Move them apart, or draw them as one.",
                  h + 1));
        } else {
          addTouch(inside.get(g), hole, both, noWall, h + 1, faults);
        }
      }
    }
    return faults;
  }

  private static boolean touchesOnly(Geometry a, Geometry b) {
    return a.touches(b);
  }

  private static void addCrossings(
      Polygon polygon, String name, int ring, List<OutlineFault> faults) {
    IsSimpleOp crossings = new IsSimpleOp(polygon.getExteriorRing());
    crossings.setFindAllLocations(true);
    List<Point> places =
        new ArrayList<>(
            crossings.getNonSimpleLocations().stream()
                .map(OutlineFaults::point)
                .distinct()
                .toList());
    TopologyValidationError error = new IsValidOp(polygon).getValidationError();
    if (places.isEmpty() && error != null) {
      places.add(point(error.getCoordinate()));
    }
    for (Point place : places) {
      faults.add(
          new OutlineFault(
              place,
              name + " crosses or touches itself. Give every wall a thickness above zero.",
              ring));
    }
  }

  private static void addTouch(
      Geometry a, Geometry b, String both, double noWall, int ring, List<OutlineFault> faults) {
    DistanceOp distance = new DistanceOp(a, b);
    if (distance.distance() <= noWall) {
      faults.add(
          new OutlineFault(
              point(distance.nearestPoints()[0]),
              both
                  + " touch, to within 10⁻⁶ of the section. Give every wall a thickness above zero.",
              ring));
    }
  }

  private static Point placeOutside(Polygon hole, Polygon outside) {
    Coordinate place = hole.difference(outside).getCoordinate();
    return point(place == null ? hole.getCoordinate() : place);
  }

  private static Point point(Coordinate coordinate) {
    return new Point(coordinate.x, coordinate.y);
  }

  /** The outline with chords for arcs. */
  static Polygon flattened(Outline outline) {
    GeometryFactory factory = new GeometryFactory();
    return factory.createPolygon(
        flattened(outline.outer(), factory),
        outline.holes().stream().map(hole -> flattened(hole, factory)).toArray(LinearRing[]::new));
  }

  private static LinearRing flattened(Ring ring, GeometryFactory factory) {
    List<Coordinate> points = new ArrayList<>();
    for (Edge edge : ring.edges()) {
      int pieces = (int) Math.max(1, Math.ceil(Math.abs(edge.sweep()) / CHORD_TURN));
      // Two half circles need more than one chord each to enclose anything; CHORD_TURN sees to it.
      for (int i = 0; i < pieces; i++) {
        Point at = edge.at((double) i / pieces);
        points.add(new Coordinate(at.y(), at.z()));
      }
    }
    points.add(new Coordinate(points.get(0)));
    while (points.size() < 4) {
      points.add(new Coordinate(points.get(0)));
    }
    return factory.createLinearRing(points.toArray(Coordinate[]::new));
  }
}
