package spanledger.section.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spanledger.section.outline.Point;

/**
 * Refines marked triangles by bisecting longest edges, with as many neighbours as keep the mesh
 * conforming. New boundary nodes lie on the outline itself, arcs included.
 *
 * <p>Reference: M. C. Rivara, Algorithms for refining triangular grids suitable for adaptive and
 * multigrid techniques, Int. J. Numer. Meth. Engng 20 (1984): angles stay above half of the least
 * angle of the first mesh.
 */
final class Bisection {

  private final Triangulation coarse;
  private final Triangulation.EdgeNumbers edges;
  private final boolean[] split;
  private final int[] middle;
  private final List<Point> points;
  private final List<BoundaryPiece> pieces;
  private final int[] firstHalf;
  private final int[] secondHalf;
  private int[] corners;
  private int[] pieceOf;
  private int count;

  private Bisection(Triangulation coarse) {
    this.coarse = coarse;
    edges = coarse.edgeNumbers();
    split = new boolean[edges.count()];
    middle = new int[edges.count()];
    points = new ArrayList<>(coarse.points());
    pieces = new ArrayList<>();
    firstHalf = new int[coarse.pieces().size()];
    secondHalf = new int[coarse.pieces().size()];
    corners = new int[coarse.triangleCount() * 6];
    pieceOf = new int[coarse.triangleCount() * 6];
  }

  static Triangulation refine(Triangulation coarse, boolean[] marked) {
    Bisection bisection = new Bisection(coarse);
    bisection.chooseEdges(marked);
    bisection.placeMiddles();
    for (int t = 0; t < coarse.triangleCount(); t++) {
      bisection.divide(t);
    }
    return new Triangulation(
        bisection.points,
        Arrays.copyOf(bisection.corners, 3 * bisection.count),
        Arrays.copyOf(bisection.pieceOf, 3 * bisection.count),
        bisection.pieces);
  }

  private void chooseEdges(boolean[] marked) {
    for (int t = 0; t < coarse.triangleCount(); t++) {
      if (marked[t]) {
        split[edges.of(t, coarse.longestEdge(t))] = true;
      }
    }
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int t = 0; t < coarse.triangleCount(); t++) {
        int longest = edges.of(t, coarse.longestEdge(t));
        if (!split[longest]
            && (split[edges.of(t, 0)] || split[edges.of(t, 1)] || split[edges.of(t, 2)])) {
          split[longest] = true;
          changed = true;
        }
      }
    }
  }

  private void placeMiddles() {
    boolean[] placed = new boolean[edges.count()];
    for (int t = 0; t < coarse.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        int edge = edges.of(t, k);
        int piece = coarse.piece(t, k);
        if (piece >= 0) {
          BoundaryPiece whole = coarse.pieces().get(piece);
          firstHalf[piece] = pieces.size();
          pieces.add(split[edge] ? whole.first(0.5) : whole);
          if (split[edge]) {
            secondHalf[piece] = pieces.size();
            pieces.add(whole.second(0.5));
          }
        }
        if (split[edge] && !placed[edge]) {
          placed[edge] = true;
          middle[edge] = points.size();
          points.add(
              piece >= 0
                  ? coarse.pieces().get(piece).at(0.5)
                  : coarse.point(t, k).towards(coarse.point(t, k + 1), 0.5));
        }
      }
    }
  }

  /** Splits at the middle of the longest edge, then each half at its other marked edge. */
  private void divide(int t) {
    int k = coarse.longestEdge(t);
    int a = coarse.corner(t, k);
    int b = coarse.corner(t, k + 1);
    int c = coarse.corner(t, k + 2);
    int pieceBc = coarse.piece(t, (k + 1) % 3);
    int pieceCa = coarse.piece(t, (k + 2) % 3);
    if (!split[edges.of(t, k)]) {
      add(a, b, c, whole(coarse.piece(t, k)), whole(pieceBc), whole(pieceCa));
      return;
    }
    int m = middle[edges.of(t, k)];
    int pieceAb = coarse.piece(t, k);
    if (split[edges.of(t, k + 1)]) {
      int n = middle[edges.of(t, k + 1)];
      add(m, b, n, second(pieceAb), first(pieceBc), Triangulation.INSIDE);
      add(m, n, c, Triangulation.INSIDE, second(pieceBc), Triangulation.INSIDE);
    } else {
      add(m, b, c, second(pieceAb), whole(pieceBc), Triangulation.INSIDE);
    }
    if (split[edges.of(t, k + 2)]) {
      int n = middle[edges.of(t, k + 2)];
      add(m, c, n, Triangulation.INSIDE, first(pieceCa), Triangulation.INSIDE);
      add(m, n, a, Triangulation.INSIDE, second(pieceCa), first(pieceAb));
    } else {
      add(m, c, a, Triangulation.INSIDE, whole(pieceCa), first(pieceAb));
    }
  }

  private int whole(int piece) {
    return piece < 0 ? piece : firstHalf[piece];
  }

  private int first(int piece) {
    return piece < 0 ? piece : firstHalf[piece];
  }

  private int second(int piece) {
    return piece < 0 ? piece : secondHalf[piece];
  }

  private void add(int a, int b, int c, int ab, int bc, int ca) {
    if (3 * count + 3 > corners.length) {
      corners = Arrays.copyOf(corners, corners.length * 2);
      pieceOf = Arrays.copyOf(pieceOf, pieceOf.length * 2);
    }
    int at = 3 * count++;
    corners[at] = a;
    corners[at + 1] = b;
    corners[at + 2] = c;
    pieceOf[at] = ab;
    pieceOf[at + 1] = bc;
    pieceOf[at + 2] = ca;
  }
}
