package spanledger.section.mesh;

import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;

/**
 * The part of an outline edge that one triangle lies along; the material is to its left.
 *
 * @param edge the outline edge
 * @param ring 0 for the outer ring, then the holes in order
 * @param from fraction of the edge's length at the first node
 * @param to fraction of the edge's length at the second node
 */
record BoundaryPiece(Edge edge, int ring, double from, double to) {

  Point start() {
    return edge.at(from);
  }

  Point end() {
    return edge.at(to);
  }

  Point at(double t) {
    return edge.at(from + (to - from) * t);
  }

  double turn() {
    return edge.sweep() * (to - from);
  }

  BoundaryPiece first(double t) {
    return new BoundaryPiece(edge, ring, from, from + (to - from) * t);
  }

  BoundaryPiece second(double t) {
    return new BoundaryPiece(edge, ring, from + (to - from) * t, to);
  }
}
