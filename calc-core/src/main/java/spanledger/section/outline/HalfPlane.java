package spanledger.section.outline;

import java.util.List;

/**
 * The part of an outline on the left of a line.
 *
 * <p>With v the distance to the left of the line and u the distance along it, Green's theorem gives
 * the area as −∮v du and the first moment as −½∮v² du over those pieces of the boundary where v is
 * positive; the cut itself has v = 0 and adds nothing.
 *
 * @param area mm²
 * @param firstMoment about the line, mm³, never negative
 * @param width length of the cut through the material, mm
 */
record HalfPlane(double area, double firstMoment, double width) {

  /**
   * @param edges the boundary, material to the left
   * @param origin a point of the line
   * @param along the direction of the line, of length 1
   */
  static HalfPlane leftOf(List<Edge> edges, Point origin, Point along) {
    Sum sum = new Sum(origin, along);
    edges.forEach(sum::add);
    return new HalfPlane(sum.area, sum.moment, sum.width);
  }

  private static final class Sum {
    private final Point origin;
    private final Point along;
    private final Point left;
    private double area;
    private double moment;
    private double width;

    Sum(Point origin, Point along) {
      this.origin = origin;
      this.along = along;
      this.left = along.quarterTurn();
    }

    void add(Edge edge) {
      if (edge instanceof ArcEdge arc) {
        addArc(arc);
      } else {
        addLine(edge.start(), edge.end());
      }
    }

    private double u(Point point) {
      return point.minus(origin).dot(along);
    }

    private double v(Point point) {
      return point.minus(origin).dot(left);
    }

    private void addLine(Point start, Point end) {
      double u1 = u(start);
      double v1 = v(start);
      double u2 = u(end);
      double v2 = v(end);
      if (v1 <= 0 && v2 <= 0) {
        return;
      }
      if (v1 < 0 || v2 < 0) {
        double cut = u1 + (u2 - u1) * v1 / (v1 - v2);
        // Upward edges have the material on their left, at smaller u.
        width += v1 < 0 ? cut : -cut;
        if (v1 < 0) {
          u1 = cut;
          v1 = 0;
        } else {
          u2 = cut;
          v2 = 0;
        }
      } else if (v1 == 0 || v2 == 0) {
        width += v1 == 0 ? u1 : -u2;
      }
      area -= (u2 - u1) * (v1 + v2) / 2;
      moment -= (u2 - u1) * (v1 * v1 + v1 * v2 + v2 * v2) / 6;
    }

    private void addArc(ArcEdge arc) {
      double sweep = arc.sweep();
      double centre = v(arc.centre());
      double radius = arc.radius();
      double[] stops = {0, 1, 1, 1};
      int count = 1;
      if (Math.abs(centre) < radius) {
        // v = centre + radius·sin(angle from the line)
        Point spoke = arc.start().minus(arc.centre());
        double begin = Math.atan2(spoke.dot(left), spoke.dot(along));
        double root = Math.asin(-centre / radius);
        double a = fraction(root - begin, sweep);
        double b = fraction(Math.PI - root - begin, sweep);
        for (double t : new double[] {Math.min(a, b), Math.max(a, b)}) {
          if (t > 0 && t < 1) {
            stops[count++] = t;
          }
        }
      }
      for (int i = 0; i < count; i++) {
        double from = stops[i];
        double to = i + 1 < count ? stops[i + 1] : 1;
        if (v(arc.at((from + to) / 2)) > 0) {
          addPiece(arc, from, to);
          width += from > 0 ? u(arc.at(from)) : 0;
          width -= to < 1 ? u(arc.at(to)) : 0;
        }
      }
    }

    private static double fraction(double angle, double sweep) {
      double turn = angle % (2 * Math.PI);
      if (sweep > 0 && turn < 0) {
        turn += 2 * Math.PI;
      } else if (sweep < 0 && turn > 0) {
        turn -= 2 * Math.PI;
      }
      return turn / sweep;
    }

    /** The chord, then the segment beyond it. */
    private void addPiece(ArcEdge arc, double from, double to) {
      Point start = arc.at(from);
      Point end = arc.at(to);
      double u1 = u(start);
      double v1 = v(start);
      double u2 = u(end);
      double v2 = v(end);
      area -= (u2 - u1) * (v1 + v2) / 2;
      moment -= (u2 - u1) * (v1 * v1 + v1 * v2 + v2 * v2) / 6;
      double turn = arc.sweep() * (to - from);
      double signed = arc.radius() * Math.signum(turn);
      double segment = signed * signed * (turn - Math.sin(turn)) / 2;
      double half = Math.sin(turn / 2);
      double first = 2.0 / 3 * signed * signed * signed * half * half * half;
      Point outward = arc.tangent((from + to) / 2).quarterTurn().times(-1);
      area += segment;
      moment += v(arc.centre()) * segment + outward.dot(left) * first;
    }
  }
}
