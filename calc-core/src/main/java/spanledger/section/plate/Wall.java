package spanledger.section.plate;

import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;

/**
 * Two stretches of the boundary that face each other.
 *
 * @param near the stretch of the edge of lower number
 * @param far the other
 * @param nearEdge its edge
 * @param farEdge the edge of the other
 */
record Wall(Stretch near, Stretch far, Edge nearEdge, Edge farEdge) {

  /** The end where the near face starts and the far face ends, on the midline. */
  Point start() {
    return near.start(nearEdge).towards(far.end(farEdge), 0.5);
  }

  /** The end where the near face ends and the far face starts, on the midline. */
  Point end() {
    return near.end(nearEdge).towards(far.start(farEdge), 0.5);
  }

  double thickness() {
    return (near.thickness() + far.thickness()) / 2;
  }

  boolean isCurved() {
    return nearEdge.sweep() != 0;
  }

  /** Turn of the midline from start to end, rad. */
  double turn() {
    return nearEdge.sweep() * (near.to() - near.from());
  }

  /** Length of the midline: the mean of both faces. */
  double length() {
    return (near.length(nearEdge) + far.length(farEdge)) / 2;
  }

  /** The direction in which the wall leaves one of its ends for its own middle. */
  Point inwardFrom(boolean atStart) {
    return atStart ? nearEdge.tangent(near.from()) : nearEdge.tangent(near.to()).times(-1);
  }
}
