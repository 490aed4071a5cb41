package spanledger.section.outline;

import java.util.List;
import spanledger.procedure.CompiledProcedure;

/** Sums {@link EdgeIntegrals} and {@link ArcIntegrals} around boundaries. */
public final class BoundaryIntegrals {

  private static final CompiledProcedure EDGE = EdgeIntegrals.PROCEDURE.compile();
  private static final CompiledProcedure ARC = ArcIntegrals.PROCEDURE.compile();
  private static final List<String> SUMS =
      List.of("ΔL", "ΔA", "ΔS_z", "ΔS_y", "ΔI_z", "ΔI_y", "ΔI_yz");
  private static final int[] EDGE_SLOTS = SUMS.stream().mapToInt(EDGE::slot).toArray();
  private static final int[] ARC_SLOTS = SUMS.stream().mapToInt(ARC::slot).toArray();

  private BoundaryIntegrals() {}

  /** The integrals of an outline about the given origin. */
  public static AreaIntegrals about(Point origin, Outline outline) {
    return about(origin, outline.edges());
  }

  /**
   * The integrals over the area that edges bound.
   *
   * @param origin the origin that the integrals are taken about; near the section, so that digits
   *     are kept
   * @param edges closed chains, material to the left
   */
  static AreaIntegrals about(Point origin, List<Edge> edges) {
    double[] sums = new double[SUMS.size()];
    double[] edge = EDGE.newSlots();
    double[] arc = ARC.newSlots();
    for (Edge each : edges) {
      put(edge, origin, each);
      EDGE.evaluate(edge);
      boolean curved = each instanceof ArcEdge;
      if (each instanceof ArcEdge bent) {
        put(arc, origin, each);
        arc[4] = bent.bulge();
        ARC.evaluate(arc);
        sums[0] += arc[ARC_SLOTS[0]];
      } else {
        sums[0] += edge[EDGE_SLOTS[0]];
      }
      for (int i = 1; i < sums.length; i++) {
        sums[i] += edge[EDGE_SLOTS[i]] + (curved ? arc[ARC_SLOTS[i]] : 0);
      }
    }
    return new AreaIntegrals(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5], sums[6]);
  }

  private static void put(double[] slots, Point origin, Edge edge) {
    slots[0] = edge.start().y() - origin.y();
    slots[1] = edge.start().z() - origin.z();
    slots[2] = edge.end().y() - origin.y();
    slots[3] = edge.end().z() - origin.z();
  }
}
