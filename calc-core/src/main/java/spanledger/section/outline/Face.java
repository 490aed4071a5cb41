package spanledger.section.outline;

import java.util.List;

/**
 * A named part of the boundary, such as a slot lip or a keyed face.
 *
 * @param name its name
 * @param ring the ring it lies on: 0 for the outer ring, then the holes in order
 * @param edges its edges in order of travel, material to the left
 */
public record Face(String name, int ring, List<Edge> edges) {

  public Face {
    edges = List.copyOf(edges);
  }

  /** Length along the face, mm. */
  public double length() {
    return edges.stream().mapToDouble(Edge::length).sum();
  }
}
