package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;

/** What is wrong with a chain of edges on its own. */
final class RingFaults {

  private RingFaults() {}

  static List<OutlineFault> of(List<Edge> edges) {
    List<OutlineFault> faults = new ArrayList<>();
    if (edges.isEmpty()) {
      faults.add(new OutlineFault(new Point(0, 0), "the ring has no edges. Give at least three."));
      return faults;
    }
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      Edge next = edges.get((i + 1) % edges.size());
      String name = "edge " + (i + 1) + " of " + edges.size();
      if (!edge.start().isFinite() || !edge.end().isFinite()) {
        faults.add(
            new OutlineFault(edge.start(), name + " has a coordinate that is not a number."));
      } else if (edge.start().equals(edge.end())) {
        faults.add(
            new OutlineFault(
                edge.start(),
                name
                    + " starts and ends at the same point. Remove the repeated point, or make a full"
                    + " circle of two arcs."));
      } else if (edge instanceof ArcEdge arc && !isArc(arc)) {
        faults.add(
            new OutlineFault(
                edge.start(),
                name
                    + " is an arc to "
                    + edge.end()
                    + " with bulge "
                    + arc.bulge()
                    + ", which is no arc. Give a straight edge, or an arc of less than a full turn."));
      }
      if (!edge.end().equals(next.start())) {
        faults.add(
            new OutlineFault(
                edge.end(),
                name
                    + " ends here, but the next starts at "
                    + next.start()
                    + ", a gap of "
                    + edge.end().distance(next.start())
                    + " mm. Close the ring."));
      }
    }
    if (faults.isEmpty() && edges.size() < 3 && edges.stream().allMatch(e -> e.sweep() == 0)) {
      faults.add(
          new OutlineFault(
              edges.get(0).start(), "the ring encloses no area. Give at least three corners."));
    }
    return faults;
  }

  private static boolean isArc(ArcEdge arc) {
    return Double.isFinite(arc.bulge())
        && Math.abs(arc.bulge()) > 1e-9
        && Math.abs(arc.bulge()) < 1e3;
  }
}
