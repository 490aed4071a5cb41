package spanledger.section.outline;

import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * The extreme fibres of a section from an axis through its centroid, by {@link AxisDistance} of
 * each corner and {@link ArcReach} of each arc.
 *
 * @param positive distance of the farthest on the left of the axis, mm
 * @param negative distance of the farthest on the right, mm
 */
record Fibres(double positive, double negative) {

  private static final CompiledProcedure POINT = AxisDistance.PROCEDURE.compile();
  private static final CompiledProcedure REACH = ArcReach.PROCEDURE.compile();
  private static final CompiledProcedure ARC = ArcIntegrals.PROCEDURE.compile();
  private static final List<String> FROM_ARC = List.of("r", "φ", "n_y", "n_z", "y_c", "z_c");

  /**
   * Finds them.
   *
   * @param angle of the axis, to the left of y, rad
   */
  static Fibres of(List<Edge> edges, Point centroid, double angle) {
    double positive = 0;
    double negative = 0;
    for (Edge edge : edges) {
      Point start = edge.start().minus(centroid);
      double v = POINT.run(start.y(), start.z(), 0, 0, angle)[POINT.slot("v")];
      positive = Math.max(positive, v);
      negative = Math.max(negative, -v);
      if (edge instanceof ArcEdge arc) {
        double[] reach = reach(arc, centroid, angle);
        positive = Math.max(positive, reach[REACH.slot("v_+")]);
        negative = Math.max(negative, -reach[REACH.slot("v_-")]);
      }
    }
    return new Fibres(positive, negative);
  }

  private static double[] reach(ArcEdge arc, Point centroid, double angle) {
    Point start = arc.start().minus(centroid);
    Point end = arc.end().minus(centroid);
    double[] values = ARC.run(start.y(), start.z(), end.y(), end.z(), arc.bulge());
    double[] slots = REACH.newSlots();
    for (int i = 0; i < FROM_ARC.size(); i++) {
      slots[i] = values[ARC.slot(FROM_ARC.get(i))];
    }
    slots[REACH.slot("α")] = angle;
    REACH.evaluate(slots);
    return slots;
  }
}
