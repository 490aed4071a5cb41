package spanledger.section.outline;

/**
 * A circular edge; see {@link Edge}.
 *
 * @param start where it starts, mm
 * @param end where it ends, mm; never the start, so a full circle takes two arcs
 * @param bulge the tangent of a quarter of the angle that the arc turns to the left; negative if it
 *     turns to the right, 1 for a half circle
 * @param face the name of its face; empty if it has none
 */
public record ArcEdge(Point start, Point end, double bulge, String face) implements Edge {

  public ArcEdge(Point start, Point end, double bulge) {
    this(start, end, bulge, "");
  }

  /**
   * The arc about a centre, of less than a full turn.
   *
   * @param centre the centre, mm; start and end should be equally far from it
   * @param turnsLeft whether the arc turns to the left (counter-clockwise)
   */
  public static ArcEdge about(Point centre, Point start, Point end, boolean turnsLeft) {
    Point from = start.minus(centre);
    Point to = end.minus(centre);
    double sweep = Math.atan2(from.cross(to), from.dot(to));
    if (turnsLeft && sweep <= 0) {
      sweep += 2 * Math.PI;
    } else if (!turnsLeft && sweep >= 0) {
      sweep -= 2 * Math.PI;
    }
    return new ArcEdge(start, end, Math.tan(sweep / 4));
  }

  @Override
  public double sweep() {
    return 4 * Math.atan(bulge);
  }

  /** Radius, mm. */
  public double radius() {
    return Math.abs(signedRadius());
  }

  private double signedRadius() {
    return start.distance(end) * (1 + bulge * bulge) / (4 * bulge);
  }

  /** Centre, mm. */
  public Point centre() {
    Point toLeft = end.minus(start).quarterTurn();
    return start.towards(end, 0.5).plus(toLeft.times((1 - bulge * bulge) / (4 * bulge)));
  }

  @Override
  public double length() {
    return radius() * Math.abs(sweep());
  }

  @Override
  public Point at(double t) {
    if (t <= 0) {
      return start;
    }
    if (t >= 1) {
      return end;
    }
    // Along and across the chord, so that flat arcs keep their digits.
    double half = sweep() / 2;
    double here = sweep() * t;
    double radius = signedRadius();
    Point chord = end.minus(start);
    Point along = chord.times(1 / chord.length());
    double forward = radius * 2 * Math.sin(here / 2) * Math.cos(half - here / 2);
    double right = radius * 2 * Math.sin(here / 2) * Math.sin(half - here / 2);
    return start.plus(along.times(forward)).minus(along.quarterTurn().times(right));
  }

  @Override
  public Point tangent(double t) {
    Point chord = end.minus(start);
    Point along = chord.times(1 / chord.length());
    double turn = sweep() * (t - 0.5);
    return along.times(Math.cos(turn)).plus(along.quarterTurn().times(Math.sin(turn)));
  }

  @Override
  public Edge part(double from, double to) {
    return new ArcEdge(at(from), at(to), Math.tan(Math.atan(bulge) * (to - from)), face);
  }

  @Override
  public Edge reversed() {
    return new ArcEdge(end, start, -bulge, face);
  }

  @Override
  public Edge moved(Similarity similarity) {
    return new ArcEdge(
        similarity.apply(start),
        similarity.apply(end),
        similarity.mirrored() ? -bulge : bulge,
        face);
  }

  @Override
  public Edge named(String newFace) {
    return new ArcEdge(start, end, bulge, newFace);
  }
}
