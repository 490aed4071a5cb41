package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;

/** The boundary on the left of a line, cut where it crosses. */
public final class HalfBoundary {

  /** Cuts nearer to an end than this part of the edge are taken as the end itself. */
  private static final double AT_END = 1e-12;

  private HalfBoundary() {}

  /**
   * A piece of an edge on the left of the line.
   *
   * @param edge number of the edge
   * @param from fraction of its length where the piece starts; 0 if it starts with the edge
   * @param to fraction of its length where the piece ends; 1 if it ends with the edge
   * @param part the piece
   */
  public record Piece(int edge, double from, double to, Edge part) {

    /** Whether it is the whole edge. */
    public boolean isWhole() {
      return from == 0 && to == 1;
    }
  }

  /**
   * The pieces, in the order of the edges. With the line itself, which adds nothing to integrals
   * about a point of it, they bound the part of the area on its left.
   *
   * @param edges closed chains, material to the left
   * @param origin a point of the line
   * @param along its direction, of length 1
   */
  public static List<Piece> leftOf(List<Edge> edges, Point origin, Point along) {
    Point left = along.quarterTurn();
    List<Piece> pieces = new ArrayList<>();
    for (int e = 0; e < edges.size(); e++) {
      Edge edge = edges.get(e);
      List<Double> stops = new ArrayList<>(List.of(0.0));
      stops.addAll(cuts(edge, origin, along, left));
      stops.add(1.0);
      for (int i = 0; i + 1 < stops.size(); i++) {
        double from = stops.get(i);
        double to = stops.get(i + 1);
        if (edge.at((from + to) / 2).minus(origin).dot(left) > 0) {
          boolean whole = from == 0 && to == 1;
          pieces.add(new Piece(e, from, to, whole ? edge : edge.part(from, to)));
        }
      }
    }
    return pieces;
  }

  private static List<Double> cuts(Edge edge, Point origin, Point along, Point left) {
    List<Double> cuts = new ArrayList<>();
    if (edge instanceof ArcEdge arc) {
      double sine = -arc.centre().minus(origin).dot(left) / arc.radius();
      if (Math.abs(sine) < 1) {
        Point spoke = arc.start().minus(arc.centre());
        double begin = Math.atan2(spoke.dot(left), spoke.dot(along));
        double root = Math.asin(sine);
        cuts.add(fraction(root - begin, arc.sweep()));
        cuts.add(fraction(Math.PI - root - begin, arc.sweep()));
      }
    } else {
      double from = edge.start().minus(origin).dot(left);
      double to = edge.end().minus(origin).dot(left);
      if (from * to < 0) {
        cuts.add(from / (from - to));
      }
    }
    cuts.removeIf(t -> !(t > AT_END && t < 1 - AT_END));
    cuts.sort(Double::compare);
    return cuts;
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
}
