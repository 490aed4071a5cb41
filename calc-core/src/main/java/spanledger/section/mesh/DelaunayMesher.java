package spanledger.section.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/**
 * Meshes an outline by Delaunay refinement in rounds: pieces of the boundary that a node stands too
 * close to are split, then triangles with small angles get a node at their circumcentre, until
 * neither is left. Grades by itself from fine details to wide parts.
 *
 * <p>References: J. Ruppert, A Delaunay refinement algorithm for quality 2-dimensional mesh
 * generation, J. Algorithms 18 (1995); J. R. Shewchuk, Delaunay refinement algorithms for
 * triangular mesh generation, Comput. Geom. 22 (2002), for corners below 60°.
 */
final class DelaunayMesher {

  /** The most that an arc turns along one triangle, rad. */
  private static final double LARGEST_TURN = Math.PI / 8;

  /** Circumradius per shortest edge above which a triangle is improved: angles end above 20.7°. */
  private static final double WORST_RATIO = Math.sqrt(2);

  private static final int MOST_ROUNDS = 400;
  private static final int MOST_POINTS = 60_000;

  private final List<List<BoundaryPiece>> rings = new ArrayList<>();
  private final List<Point> inner = new ArrayList<>();
  private final AcuteCorners acute;

  private DelaunayMesher(Outline outline) {
    acute = AcuteCorners.of(outline);
    List<Ring> all = outline.rings();
    for (int r = 0; r < all.size(); r++) {
      int ring = r;
      List<BoundaryPiece> pieces = new ArrayList<>();
      all.get(r)
          .edges()
          .forEach(
              edge -> {
                int parts =
                    (int) Math.max(1, Math.ceil(Math.abs(edge.sweep()) / LARGEST_TURN - 1e-9));
                for (int i = 0; i < parts; i++) {
                  pieces.add(
                      new BoundaryPiece(edge, ring, (double) i / parts, (double) (i + 1) / parts));
                }
              });
      rings.add(pieces);
    }
  }

  static Triangulation mesh(Outline outline) {
    return new DelaunayMesher(outline).refine();
  }

  private Triangulation refine() {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Triangulation now = DelaunayKernel.triangulate(rings, inner, leastPiece());
      if (now.points().size() > MOST_POINTS) {
        break;
      }
      Set<Integer> crowded = crowdedPieces(now);
      if (crowded.isEmpty()) {
        List<Point> centres = new ArrayList<>();
        crowded = improve(now, centres);
        inner.addAll(centres);
        if (crowded.isEmpty() && centres.isEmpty()) {
          return now;
        }
      }
      split(now, crowded);
    }
    throw new MeshingException(
        "The outline cannot be meshed with "
            + MOST_POINTS
            + " points. Maybe two walls or corners lie very close together: look for stray edges and"
            + " gaps far thinner than the walls.");
  }

  private double leastPiece() {
    return rings.stream()
        .flatMap(List::stream)
        .mapToDouble(piece -> piece.start().distance(piece.end()))
        .min()
        .orElseThrow();
  }

  /** Pieces whose triangle has an obtuse angle opposite. */
  private static Set<Integer> crowdedPieces(Triangulation now) {
    Set<Integer> crowded = new TreeSet<>();
    for (int t = 0; t < now.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        if (now.piece(t, k) >= 0
            && isInCircleOver(now.point(t, k), now.point(t, k + 1), now.point(t, k + 2))) {
          crowded.add(now.piece(t, k));
        }
      }
    }
    return crowded;
  }

  private static boolean isInCircleOver(Point start, Point end, Point point) {
    Point a = start.minus(point);
    Point b = end.minus(point);
    return a.dot(b) < -1e-9 * a.length() * b.length();
  }

  private record Poor(Point centre, double radius) {}

  /** Chooses circumcentres of poor triangles; returns the pieces that are in the way instead. */
  private Set<Integer> improve(Triangulation now, List<Point> centres) {
    Set<Integer> inTheWay = new TreeSet<>();
    List<Poor> poor =
        IntStream.range(0, now.triangleCount())
            .filter(t -> isPoor(now, t))
            .mapToObj(t -> circle(now, t))
            .sorted(Comparator.comparingDouble(Poor::radius).reversed())
            .toList();
    PointGrid taken = new PointGrid(now.points());
    for (Poor each : poor) {
      int blocking = blockingPiece(now, each.centre());
      if (blocking >= 0) {
        inTheWay.add(blocking);
      } else if (taken.isFree(each.centre(), 0.9 * each.radius())) {
        taken.add(each.centre());
        centres.add(each.centre());
      }
    }
    return inTheWay;
  }

  private boolean isPoor(Triangulation now, int t) {
    double a = now.edgeLength(t, 0);
    double b = now.edgeLength(t, 1);
    double c = now.edgeLength(t, 2);
    double radius = a * b * c / (4 * now.area(t));
    double shortest = Math.min(a, Math.min(b, c));
    if (radius <= WORST_RATIO * shortest) {
      return false;
    }
    int k = shortest == a ? 0 : shortest == b ? 1 : 2;
    return !acute.spans(now.point(t, k), now.point(t, k + 1));
  }

  private static Poor circle(Triangulation now, int t) {
    Point a = now.point(t, 0);
    Point b = now.point(t, 1).minus(a);
    Point c = now.point(t, 2).minus(a);
    double d = 2 * b.cross(c);
    double bb = b.dot(b);
    double cc = c.dot(c);
    Point offset = new Point((c.z() * bb - b.z() * cc) / d, (b.y() * cc - c.y() * bb) / d);
    return new Poor(a.plus(offset), offset.length());
  }

  /** The nearest piece that sees the point from its material side inside its circle; -1 if none. */
  private static int blockingPiece(Triangulation now, Point centre) {
    int found = -1;
    double nearest = Double.POSITIVE_INFINITY;
    for (int p = 0; p < now.pieces().size(); p++) {
      BoundaryPiece piece = now.pieces().get(p);
      Point start = piece.start();
      Point end = piece.end();
      double distance = start.towards(end, 0.5).distance(centre);
      if (distance < nearest && isInCircleOver(start, end, centre)) {
        nearest = distance;
        found = p;
      }
    }
    return found;
  }

  private void split(Triangulation now, Set<Integer> chosen) {
    if (chosen.isEmpty()) {
      return;
    }
    int number = 0;
    for (int r = 0; r < rings.size(); r++) {
      List<BoundaryPiece> pieces = new ArrayList<>();
      for (BoundaryPiece piece : rings.get(r)) {
        if (chosen.contains(number++)) {
          double t = acute.splitAt(piece);
          pieces.add(piece.first(t));
          pieces.add(piece.second(t));
        } else {
          pieces.add(piece);
        }
      }
      rings.set(r, pieces);
    }
    if (number != now.pieces().size()) {
      throw new IllegalStateException("Pieces are numbered " + number);
    }
  }
}
