package spanledger.section.mesh;

import java.util.ArrayList;
import java.util.List;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/**
 * Corners of the material below 60°. Pieces that meet there are split at distances that are powers
 * of two, so that both sides get nodes equally far from the corner and stop disturbing each other.
 */
final class AcuteCorners {

  private record Corner(Point at, Edge before, Edge after) {}

  private final List<Corner> corners;

  private AcuteCorners(List<Corner> corners) {
    this.corners = corners;
  }

  static AcuteCorners of(Outline outline) {
    List<Corner> corners = new ArrayList<>();
    for (Ring ring : outline.rings()) {
      List<Edge> edges = ring.edges();
      for (int i = 0; i < edges.size(); i++) {
        Edge before = edges.get(i);
        Edge after = edges.get((i + 1) % edges.size());
        Point back = before.tangent(1).times(-1);
        Point on = after.tangent(0);
        double inside = Math.atan2(on.cross(back), on.dot(back));
        if (inside > 0 && inside < Math.PI / 3 - 1e-6) {
          corners.add(new Corner(after.start(), before, after));
        }
      }
    }
    return new AcuteCorners(corners);
  }

  /** The fraction of a piece at which to split it. */
  double splitAt(BoundaryPiece piece) {
    for (Corner corner : corners) {
      boolean atStart = piece.edge() == corner.after() && piece.from() == 0;
      boolean atEnd = piece.edge() == corner.before() && piece.to() == 1;
      if (atStart != atEnd) {
        double length = piece.edge().length() * (piece.to() - piece.from());
        double shell = Math.pow(2, Math.rint(Math.log(length / 2) / Math.log(2)));
        double t = shell / length;
        if (t > 0.25 && t < 0.75) {
          return atStart ? t : 1 - t;
        }
      }
    }
    return 0.5;
  }

  /**
   * Whether both points stand equally far from an acute corner, so that the edge between them
   * belongs to its small angle.
   */
  boolean spans(Point a, Point b) {
    for (Corner corner : corners) {
      double da = corner.at().distance(a);
      double db = corner.at().distance(b);
      if (a.distance(b) < 1.01 * Math.max(da, db) && Math.abs(da - db) <= 0.01 * da) {
        return true;
      }
    }
    return false;
  }
}
