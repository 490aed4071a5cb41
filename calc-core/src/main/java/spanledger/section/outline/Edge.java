package spanledger.section.outline;

/**
 * One piece of the boundary of an outline, from a start to an end point.
 *
 * <p>Where an edge belongs to an {@link Outline} the material lies to its left.
 */
public sealed interface Edge permits StraightEdge, ArcEdge {

  Point start();

  Point end();

  /**
   * The name of the face that the edge belongs to, such as {@code slot-lip}; empty if it has none.
   */
  String face();

  /** Length along the edge, mm. */
  double length();

  /**
   * The point at a fraction of the length.
   *
   * @param t from 0 (start) to 1 (end); both ends are met exactly
   */
  Point at(double t);

  /** The direction of travel at a fraction of the length, of length 1. */
  Point tangent(double t);

  /** How far the edge turns to the left from start to end, rad; zero if straight. */
  double sweep();

  /** The part between two fractions of the length. */
  Edge part(double from, double to);

  /** The same edge travelled the other way. */
  Edge reversed();

  /** The edge after a similarity. */
  Edge moved(Similarity similarity);

  /** The edge as part of the named face. */
  Edge named(String face);
}
