package spanledger.section.plate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;

/** Pairs stretches into walls, and tells rounded corners from curved plates. */
final class Walls {

  /** A curved wall of a smaller mean radius per thickness is a rounded corner. */
  private static final double CORNER_RADIUS = 5;

  /** A curved wall that turns more is no corner, however small, rad. */
  private static final double CORNER_TURN = Math.toRadians(125);

  private final List<Edge> edges;
  private final Map<Stretch, Wall> wallOf = new HashMap<>();
  private final List<List<Stretch>> faces = new ArrayList<>();
  private final List<Wall> walls = new ArrayList<>();
  private final double[] corner;

  private Walls(List<Edge> edges) {
    this.edges = edges;
    corner = new double[edges.size()];
  }

  static Walls of(List<Edge> edges) {
    Walls walls = new Walls(edges);
    Facing facing = new Facing(edges);
    List<List<Stretch>> stretches = new ArrayList<>();
    for (int e = 0; e < edges.size(); e++) {
      stretches.add(facing.stretchesOf(e));
      walls.faces.add(new ArrayList<>());
    }
    for (int e = 0; e < edges.size(); e++) {
      for (Stretch near : stretches.get(e)) {
        if (near.opposite() > e) {
          stretches.get(near.opposite()).stream()
              .filter(far -> far.opposite() == near.edge() && walls.meet(near, far))
              .findFirst()
              .ifPresent(far -> walls.add(near, far));
        }
      }
    }
    walls.faces.forEach(list -> list.sort((a, b) -> Double.compare(a.from(), b.from())));
    return walls;
  }

  /** Whether the middle of one stretch lies abreast of the other. */
  private boolean meet(Stretch near, Stretch far) {
    Edge one = edges.get(near.edge());
    Edge other = edges.get(far.edge());
    double middle = (near.from() + near.to()) / 2;
    Point across = one.at(middle).plus(one.tangent(middle).quarterTurn().times(near.thickness()));
    double a = across.distance(far.start(other));
    double b = across.distance(far.end(other));
    double chord = far.start(other).distance(far.end(other));
    // On a chord or an arc over it of up to a half turn, no point is farther from both ends than
    // they are from each other.
    return Math.max(a, b) <= chord * (1 + 1e-6);
  }

  private void add(Stretch near, Stretch far) {
    Wall wall = new Wall(near, far, edges.get(near.edge()), edges.get(far.edge()));
    if (isCorner(wall)) {
      corner[near.edge()] += near.length(wall.nearEdge());
      corner[far.edge()] += far.length(wall.farEdge());
      return;
    }
    walls.add(wall);
    wallOf.put(near, wall);
    wallOf.put(far, wall);
    faces.get(near.edge()).add(near);
    faces.get(far.edge()).add(far);
  }

  private static boolean isCorner(Wall wall) {
    return wall.isCurved()
        && Math.abs(wall.turn()) < CORNER_TURN
        && wall.length() / Math.abs(wall.turn()) < CORNER_RADIUS * wall.thickness();
  }

  List<Wall> walls() {
    return walls;
  }

  /** The faces of walls along an edge, in order. */
  List<Stretch> facesOf(int edge) {
    return faces.get(edge);
  }

  Wall wallOf(Stretch face) {
    Wall wall = wallOf.get(face);
    if (wall == null) {
      throw new IllegalArgumentException("A stretch without wall: " + face);
    }
    return wall;
  }

  /** How much of an edge belongs to rounded corners, mm. */
  double cornerLength(int edge) {
    return corner[edge];
  }
}
