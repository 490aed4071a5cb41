package spanledger.section.plate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/**
 * Which ends of walls meet. Travelling along a ring, the end of one face and the start of the next
 * belong together: to a joint of their walls, or, if both are the same end of one wall, to its free
 * tip.
 */
final class Joints {

  /** An end of a wall. */
  record End(int wall, boolean atStart) {}

  /**
   * Boundary between two joined faces, per their thicknesses, that may belong to no plate without
   * question.
   */
  private static final double UNQUESTIONED = 4;

  private final Walls walls;
  private final Map<Wall, Integer> numberOf = new HashMap<>();
  private final int[] parent;
  private final double[] tip;
  private final List<PlateDoubt> doubts = new ArrayList<>();

  private Joints(Walls walls) {
    this.walls = walls;
    for (Wall wall : walls.walls()) {
      numberOf.put(wall, numberOf.size());
    }
    parent = new int[2 * walls.walls().size()];
    Arrays.setAll(parent, i -> i);
    tip = new double[parent.length];
  }

  static Joints of(Outline outline, Walls walls) {
    Joints joints = new Joints(walls);
    int first = 0;
    for (Ring ring : outline.rings()) {
      joints.travel(ring, first);
      first += ring.edges().size();
    }
    return joints;
  }

  private void travel(Ring ring, int first) {
    List<Stretch> faces = new ArrayList<>();
    for (int e = 0; e < ring.edges().size(); e++) {
      faces.addAll(walls.facesOf(first + e));
    }
    if (faces.isEmpty()) {
      doubts.add(
          new PlateDoubt(
              ring.edges().get(0).start(),
              "no part of the ring through this point bounds a plate"));
      return;
    }
    for (int i = 0; i < faces.size(); i++) {
      join(ring, first, faces.get(i), faces.get((i + 1) % faces.size()));
    }
  }

  private void join(Ring ring, int first, Stretch left, Stretch entered) {
    Wall from = walls.wallOf(left);
    Wall to = walls.wallOf(entered);
    int leaving = id(from, left.equals(from.far()));
    int entering = id(to, entered.equals(to.near()));
    double gap = gap(ring, first, left, entered);
    if (leaving == entering) {
      tip[leaving] = Math.max(gap, 1e-9 * from.thickness());
      return;
    }
    parent[root(leaving)] = root(entering);
    if (gap > UNQUESTIONED * (from.thickness() + to.thickness())) {
      doubts.add(
          new PlateDoubt(
              left.end(ring.edges().get(left.edge() - first)),
              "the boundary from here to "
                  + entered.start(ring.edges().get(entered.edge() - first))
                  + " bounds no plate"));
    }
  }

  /** The boundary between two faces, rounded corners left out. */
  private double gap(Ring ring, int first, Stretch left, Stretch entered) {
    List<Edge> edges = ring.edges();
    int at = left.edge() - first;
    int goal = entered.edge() - first;
    if (at == goal && entered.from() >= left.to()) {
      return edges.get(at).length() * (entered.from() - left.to());
    }
    double gap = edges.get(at).length() * (1 - left.to());
    for (int e = (at + 1) % edges.size(); e != goal; e = (e + 1) % edges.size()) {
      gap += edges.get(e).length() - walls.cornerLength(first + e);
    }
    return gap + edges.get(goal).length() * entered.from();
  }

  private int id(Wall wall, boolean atStart) {
    Integer number = numberOf.get(wall);
    if (number == null) {
      throw new IllegalArgumentException("A wall from elsewhere: " + wall);
    }
    return 2 * number + (atStart ? 0 : 1);
  }

  private int root(int id) {
    int at = id;
    while (parent[at] != at) {
      at = parent[at];
    }
    return at;
  }

  private static int id(End end) {
    return 2 * end.wall() + (end.atStart() ? 0 : 1);
  }

  /** The boundary around a free end, mm; zero if the end is joined. */
  double tip(End end) {
    return tip[id(end)];
  }

  /** The other ends in the joint of an end. */
  List<End> othersAt(End end) {
    List<End> others = new ArrayList<>();
    for (int i = 0; i < parent.length; i++) {
      if (i != id(end) && root(i) == root(id(end))) {
        others.add(new End(i / 2, i % 2 == 0));
      }
    }
    return others;
  }

  List<PlateDoubt> doubts() {
    return doubts;
  }

  Point place(End end) {
    Wall wall = walls.walls().get(end.wall());
    return end.atStart() ? wall.start() : wall.end();
  }
}
