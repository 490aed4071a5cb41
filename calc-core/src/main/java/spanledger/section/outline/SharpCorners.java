package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;

/** Corners where the boundary turns without a fillet. */
public final class SharpCorners {

  /** A turn below this is taken as smooth, rad. */
  private static final double SMOOTH = Math.toRadians(2);

  private SharpCorners() {}

  /**
   * The corners where the material takes up more than a half turn; elastic shear stress has no
   * bound there.
   */
  public static List<Point> reentrant(Outline outline) {
    List<Point> corners = new ArrayList<>();
    for (Ring ring : outline.rings()) {
      List<Edge> edges = ring.edges();
      for (int i = 0; i < edges.size(); i++) {
        Point in = edges.get(i).tangent(1);
        Point out = edges.get((i + 1) % edges.size()).tangent(0);
        if (Math.atan2(in.cross(out), in.dot(out)) < -SMOOTH) {
          corners.add(edges.get(i).end());
        }
      }
    }
    return corners;
  }
}
