package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Where parts that lie side by side would fill the same place. */
public final class PartOverlaps {

  /** Less common area than this part of the smaller one is touching, not overlapping. */
  private static final double TOUCHING = 1e-4;

  private PartOverlaps() {}

  /**
   * The overlaps of each part with those before it.
   *
   * @return one fault for each pair; its ring is the number of the later part
   */
  public static List<OutlineFault> of(List<Outline> parts) {
    List<OutlineFault> faults = new ArrayList<>();
    List<Polygon> polygons = parts.stream().map(OutlineFaults::flattened).toList();
    for (int b = 0; b < polygons.size(); b++) {
      for (int a = 0; a < b; a++) {
        Geometry common = polygons.get(a).intersection(polygons.get(b));
        double smaller = Math.min(polygons.get(a).getArea(), polygons.get(b).getArea());
        if (common.getArea() > TOUCHING * smaller) {
          Coordinate place = common.getInteriorPoint().getCoordinate();
          faults.add(
              new OutlineFault(
                  new Point(place.x, place.y),
                  "parts " + (a + 1) + " and " + (b + 1) + " overlap. Move them apart.",
                  b));
        }
      }
    }
    return faults;
  }
}
