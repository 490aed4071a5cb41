package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Vector;

/**
 * A plane polygon, such as a floor, that hides what is behind it.
 *
 * @param corners in order, at least three, in one plane
 */
record Veil(List<Vector> corners) {

  /** Members that lie in the floor, or this close to it, are not hidden by it, mm. */
  private static final double LIES_IN = 1;

  /** Into how many pieces a member is cut to see where it goes out of sight. */
  private static final int PIECES = 24;

  private static final int HALVINGS = 16;

  Veil {
    corners = List.copyOf(corners);
  }

  /** A stretch of a bar, as shares of its length. */
  record Stretch(double from, double to, boolean hidden) {}

  /** Whether a place is behind the polygon. */
  boolean hides(Vector place, Vector towardsEye) {
    Vector normal = normal();
    double facing = normal.dot(towardsEye);
    if (Math.abs(facing) < 1e-9) {
      return false;
    }
    double way = normal.dot(corners.get(0).minus(place)) / facing;
    return way * Math.abs(facing) > LIES_IN && holds(place.plus(towardsEye.times(way)), normal);
  }

  private Vector normal() {
    // Twice the area by the fan from the first corner, whatever its shape (Newell's method).
    Vector sum = Vector.ZERO;
    for (int i = 1; i + 1 < corners.size(); i++) {
      Vector a = corners.get(i).minus(corners.get(0));
      sum = sum.plus(a.cross(corners.get(i + 1).minus(corners.get(0))));
    }
    return sum.norm() > 0 ? sum.unit() : new Vector(0, 0, 1);
  }

  /** Whether a place in the plane is inside: by how often a ray crosses the rim. */
  private boolean holds(Vector place, Vector normal) {
    Vector u = corners.get(1).minus(corners.get(0));
    Vector right = u.norm() > 0 ? u.unit() : new Vector(1, 0, 0);
    Vector up = normal.cross(right);
    double x = right.dot(place);
    double y = up.dot(place);
    boolean inside = false;
    for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
      double xi = right.dot(corners.get(i));
      double yi = up.dot(corners.get(i));
      double xj = right.dot(corners.get(j));
      double yj = up.dot(corners.get(j));
      if (yi > y != yj > y && x < (xj - xi) * (y - yi) / (yj - yi) + xi) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** The stretches of a bar that can be seen and those that veils hide, in order. */
  static List<Stretch> stretches(Bar bar, List<Veil> veils, Vector towardsEye) {
    List<Stretch> stretches = new ArrayList<>();
    double from = 0;
    boolean hidden = hidden(bar, 0.5 / PIECES, veils, towardsEye);
    for (int i = 1; i < PIECES; i++) {
      double next = (i + 0.5) / PIECES;
      if (hidden(bar, next, veils, towardsEye) != hidden) {
        double low = (i - 0.5) / PIECES;
        double high = next;
        for (int k = 0; k < HALVINGS; k++) {
          double middle = (low + high) / 2;
          if (hidden(bar, middle, veils, towardsEye) == hidden) {
            low = middle;
          } else {
            high = middle;
          }
        }
        stretches.add(new Stretch(from, high, hidden));
        from = high;
        hidden = !hidden;
      }
    }
    stretches.add(new Stretch(from, 1, hidden));
    return stretches;
  }

  private static boolean hidden(Bar bar, double t, List<Veil> veils, Vector towardsEye) {
    Vector place = bar.at(t);
    return veils.stream().anyMatch(veil -> veil.hides(place, towardsEye));
  }
}
