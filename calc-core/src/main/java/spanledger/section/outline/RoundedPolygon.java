package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * Builds rings the way extrusions are drawn: sharp corners first, then a radius and a face name
 * where wanted.
 */
public final class RoundedPolygon {

  /**
   * A corner as drawn.
   *
   * @param bulge of the edge that leaves it; 0 if straight
   */
  private record Corner(Point at, double radius, double bulge, String face) {}

  /** A corner that turns less has nothing to round, rad. */
  private static final double STRAIGHT = 1e-6;

  private final List<Corner> corners = new ArrayList<>();

  /** Starts with no corners. */
  public RoundedPolygon() {}

  /** Adds a sharp corner. */
  public RoundedPolygon corner(double y, double z) {
    return corner(y, z, 0);
  }

  /** Adds a corner rounded by an arc of the given radius, mm. */
  public RoundedPolygon corner(double y, double z, double radius) {
    corners.add(new Corner(new Point(y, z), radius, 0, ""));
    return this;
  }

  /** Gives the edge that leaves the latest corner a face name. */
  public RoundedPolygon face(String name) {
    Corner latest = corners.remove(corners.size() - 1);
    corners.add(new Corner(latest.at(), latest.radius(), latest.bulge(), name));
    return this;
  }

  /**
   * Makes the edge that leaves the latest corner an arc. The corners at both its ends must be
   * sharp.
   *
   * @param bulge as in {@link ArcEdge}
   */
  public RoundedPolygon arc(double bulge) {
    Corner latest = corners.remove(corners.size() - 1);
    corners.add(new Corner(latest.at(), latest.radius(), bulge, latest.face()));
    return this;
  }

  /**
   * The ring through the corners, back to the first.
   *
   * @throws InvalidOutlineException naming every corner whose radius does not fit between its
   *     neighbours
   */
  public Ring close() {
    int n = corners.size();
    List<OutlineFault> faults = new ArrayList<>();
    Point[] in = new Point[n];
    Point[] out = new Point[n];
    double[] turn = new double[n];
    for (int i = 0; i < n; i++) {
      Corner corner = corners.get(i);
      Point from = corner.at().minus(corners.get((i + n - 1) % n).at());
      Point on = corners.get((i + 1) % n).at().minus(corner.at());
      turn[i] = corner.radius() == 0 ? 0 : Math.atan2(from.cross(on), from.dot(on));
      if (Math.abs(turn[i]) < STRAIGHT) {
        turn[i] = 0;
        in[i] = corner.at();
        out[i] = corner.at();
      } else {
        double cut = corner.radius() * Math.abs(Math.tan(turn[i] / 2));
        in[i] = corner.at().minus(from.times(cut / from.length()));
        out[i] = corner.at().plus(on.times(cut / on.length()));
      }
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      Corner corner = corners.get(i);
      if (turn[i] != 0) {
        edges.add(new ArcEdge(in[i], out[i], Math.tan(turn[i] / 4), corner.face()));
      }
      if (corner.bulge() == 0) {
        addStraight(edges, corner, out[i], in[next], corners.get(next).at(), faults);
      } else if (turn[i] != 0 || turn[next] != 0) {
        faults.add(
            new OutlineFault(
                turn[i] != 0 ? corner.at() : corners.get(next).at(),
                "a radius rounds a corner between straight edges, but an arc ends here. Draw the"
                    + " rounding as an arc of its own."));
      } else {
        edges.add(new ArcEdge(out[i], in[next], corner.bulge(), corner.face()));
      }
    }
    if (!faults.isEmpty()) {
      throw new InvalidOutlineException(faults);
    }
    return new Ring(edges);
  }

  private static void addStraight(
      List<Edge> edges,
      Corner corner,
      Point start,
      Point end,
      Point next,
      List<OutlineFault> faults) {
    Point whole = next.minus(corner.at());
    double left = end.minus(start).dot(whole) / whole.length();
    double nothing = 1e-9 * whole.length();
    if (left < -nothing) {
      faults.add(
          new OutlineFault(
              corner.at(),
              "the corner radii here and at "
                  + next
                  + " need more room than the edge between them has. Use smaller radii."));
    } else if (left > nothing) {
      edges.add(new StraightEdge(start, end, corner.face()));
    } else if (!start.equals(end) && !edges.isEmpty()) {
      // The arcs meet: let the earlier one end exactly where the later one starts.
      Edge arc = edges.remove(edges.size() - 1);
      edges.add(
          arc instanceof ArcEdge bent
              ? new ArcEdge(bent.start(), end, bent.bulge(), bent.face())
              : new StraightEdge(arc.start(), end, arc.face()));
    }
  }
}
