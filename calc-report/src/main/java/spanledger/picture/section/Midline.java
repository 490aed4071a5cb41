package spanledger.picture.section;

import java.util.List;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.StraightEdge;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/**
 * The middle of a plate.
 *
 * @param edges from its start to its end; a round tube has two half circles
 */
record Midline(List<Edge> edges) {

  /**
   * The midline of a plate.
   *
   * @param parts the section, which tells the centre of a round tube
   */
  static Midline of(Plate plate, List<Outline> parts) {
    if (plate.kind() == PlateKind.ROUND) {
      return round(plate, parts);
    }
    return new Midline(
        List.of(
            plate.bulge() == 0
                ? new StraightEdge(plate.start(), plate.end())
                : new ArcEdge(plate.start(), plate.end(), plate.bulge())));
  }

  private static Midline round(Plate plate, List<Outline> parts) {
    double radius = (plate.width() - plate.thickness()) / 2;
    Point centre = centre(plate, parts);
    Point right = centre.plus(new Point(radius, 0));
    Point left = centre.minus(new Point(radius, 0));
    return new Midline(List.of(new ArcEdge(right, left, 1), new ArcEdge(left, right, 1)));
  }

  /** The centre of the outer arc that the plate belongs to. */
  private static Point centre(Plate plate, List<Outline> parts) {
    Point best = plate.start();
    double least = Double.POSITIVE_INFINITY;
    for (Outline part : parts) {
      for (Edge edge : part.outer().edges()) {
        if (edge instanceof ArcEdge arc) {
          double off =
              Math.abs(arc.radius() - plate.width() / 2)
                  + Math.abs(
                      arc.centre().distance(plate.start())
                          - (plate.width() - plate.thickness()) / 2);
          if (off < least) {
            least = off;
            best = arc.centre();
          }
        }
      }
    }
    return best;
  }

  Point at(double t) {
    return edges.get(0).at(t);
  }

  /** To the left of the direction of travel, of length 1. */
  Point left(double t) {
    return edges.get(0).tangent(t).quarterTurn();
  }
}
