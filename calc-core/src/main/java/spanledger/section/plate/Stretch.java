package spanledger.section.plate;

import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;

/**
 * A part of an edge that faces one other edge through the material.
 *
 * @param edge number of the edge
 * @param from fraction of the edge's length
 * @param to fraction of the edge's length
 * @param opposite number of the edge faced
 * @param thickness distance to it at the middle, mm
 */
record Stretch(int edge, double from, double to, int opposite, double thickness) {

  double length(Edge along) {
    return along.length() * (to - from);
  }

  Point start(Edge along) {
    return along.at(from);
  }

  Point end(Edge along) {
    return along.at(to);
  }

  Stretch joined(Stretch next) {
    return new Stretch(edge, from, next.to, opposite, (thickness + next.thickness) / 2);
  }
}
