package spanledger.job.dxf;

import java.util.ArrayList;
import java.util.List;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;
import spanledger.section.outline.StraightEdge;

/** The edges that an entity draws, in the coordinates of the drawing or block it stands in. */
final class EntityEdges {

  private static final int CLOSED = 1;
  private static final int NOT_PLANE = 8 | 16 | 64;
  private static final int CONTROL_POINT = 16;

  private EntityEdges() {}

  /** Whether the entity draws edges. */
  static boolean isKnown(DxfEntity entity) {
    return switch (entity.type()) {
      case "LINE", "ARC", "CIRCLE", "LWPOLYLINE", "POLYLINE" -> true;
      default -> false;
    };
  }

  /**
   * The edges of an entity.
   *
   * @throws DxfFormatException if a number is missing, or it does not lie in the plane
   */
  static List<DrawnEdge> of(DxfEntity entity) {
    List<Edge> edges =
        switch (entity.type()) {
          case "LINE" -> line(entity);
          case "ARC" -> arc(entity);
          case "CIRCLE" -> circle(entity);
          case "LWPOLYLINE" -> polyline(entity, lightVertices(entity));
          default -> polyline(entity, vertices(entity));
        };
    // Lines are in world coordinates; the others in those of their own extrusion direction.
    boolean mirrored = !entity.type().equals("LINE") && isFromBelow(entity);
    return edges.stream()
        .map(edge -> mirrored ? edge.moved(Similarity.mirrorY()) : edge)
        .map(edge -> new DrawnEdge(edge, entity))
        .toList();
  }

  /** Whether the entity is drawn as seen from below, which mirrors its x. */
  static boolean isFromBelow(DxfEntity entity) {
    double up = entity.number(230, 1);
    double across = Math.hypot(entity.number(210, 0), entity.number(220, 0));
    if (across > 1e-6 * Math.abs(up)) {
      throw new DxfFormatException(
          entity.line(), entity.words() + " that is tilted", "a drawing in one plane");
    }
    return up < 0;
  }

  private static List<Edge> line(DxfEntity entity) {
    Point start = entity.point(10);
    Point end = entity.point(11);
    if (entity.number(30, 0) != entity.number(31, 0)) {
      throw new DxfFormatException(
          entity.line(), entity.words() + " that rises out of the plane", "a drawing in one plane");
    }
    return start.equals(end) ? List.of() : List.of(new StraightEdge(start, end));
  }

  private static List<Edge> arc(DxfEntity entity) {
    double radius = radius(entity);
    double from = entity.required(50);
    double turn = (entity.required(51) - from) % 360;
    if (turn <= 0) {
      turn += 360;
    }
    Point centre = entity.point(10);
    Point start = centre.plus(Point.direction(Math.toRadians(from)).times(radius));
    Point end = centre.plus(Point.direction(Math.toRadians(from + turn)).times(radius));
    return turn > 359.999
        ? circle(entity)
        : List.of(new ArcEdge(start, end, Math.tan(Math.toRadians(turn) / 4)));
  }

  private static List<Edge> circle(DxfEntity entity) {
    double radius = radius(entity);
    Point right = entity.point(10).plus(new Point(radius, 0));
    Point left = entity.point(10).minus(new Point(radius, 0));
    return List.of(new ArcEdge(right, left, 1), new ArcEdge(left, right, 1));
  }

  private static double radius(DxfEntity entity) {
    double radius = entity.required(40);
    if (!(radius > 0)) {
      throw new DxfFormatException(
          entity.line(), entity.words() + " with radius " + radius, "a radius above zero");
    }
    return radius;
  }

  private record Vertex(Point at, double bulge) {}

  private static List<Vertex> lightVertices(DxfEntity entity) {
    List<Vertex> vertices = new ArrayList<>();
    for (DxfTag tag : entity.tags()) {
      int last = vertices.size() - 1;
      switch (tag.code()) {
        case 10 -> vertices.add(new Vertex(new Point(DxfEntity.number(tag), Double.NaN), 0));
        case 20 -> {
          if (last >= 0) {
            Vertex open = vertices.get(last);
            vertices.set(
                last, new Vertex(new Point(open.at().y(), DxfEntity.number(tag)), open.bulge()));
          }
        }
        case 42 -> {
          if (last >= 0) {
            vertices.set(last, new Vertex(vertices.get(last).at(), DxfEntity.number(tag)));
          }
        }
        default -> {}
      }
    }
    return vertices;
  }

  private static List<Vertex> vertices(DxfEntity entity) {
    if ((entity.flags() & NOT_PLANE) != 0) {
      throw new DxfFormatException(
          entity.line(), entity.words() + " in space, or a mesh", "a polyline in one plane");
    }
    return entity.vertices().stream()
        .filter(vertex -> (vertex.flags() & CONTROL_POINT) == 0)
        .map(vertex -> new Vertex(vertex.point(10), vertex.number(42, 0)))
        .toList();
  }

  private static List<Edge> polyline(DxfEntity entity, List<Vertex> vertices) {
    for (Vertex vertex : vertices) {
      if (!vertex.at().isFinite()) {
        throw new DxfFormatException(
            entity.line(), entity.words() + " with a vertex without y", "x and y of each vertex");
      }
    }
    boolean closed = (entity.flags() & CLOSED) != 0;
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < (closed ? vertices.size() : vertices.size() - 1); i++) {
      Vertex from = vertices.get(i);
      Vertex to = vertices.get((i + 1) % vertices.size());
      if (!from.at().equals(to.at())) {
        edges.add(
            Math.abs(from.bulge()) < 1e-9
                ? new StraightEdge(from.at(), to.at())
                : new ArcEdge(from.at(), to.at(), from.bulge()));
      }
    }
    return edges;
  }
}
