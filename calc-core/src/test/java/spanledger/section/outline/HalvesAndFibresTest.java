package spanledger.section.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What the workbook shows of bending, against the searches of the program, which work otherwise:
 * extents by directions, half planes by integrals along the line.
 */
class HalvesAndFibresTest {

  private static final int ANGLES = 180;

  /** A hook with fillets, a bulb of more than a half circle, and a round hole. */
  private static List<Edge> hook() {
    Ring outer =
        new RoundedPolygon()
            .corner(0, 0, 6)
            .corner(50, 0, 2)
            .corner(50, 8, 2)
            .corner(8, 8, 3)
            .corner(8, 60)
            .corner(0, 60)
            .close();
    List<Edge> edges = new ArrayList<>(outer.edges());
    edges.replaceAll(
        edge ->
            edge.start().equals(new Point(8, 60))
                ? new ArcEdge(edge.start(), edge.end(), 1.6)
                : edge);
    return Outline.of(new Ring(edges), Ring.circle(new Point(30, 4), 1.5)).edges();
  }

  /** Any difference but rounding would be an error of one of both; sizes are some 60 mm. */
  @Test
  void fibresReachAsFarAsExtents() {
    List<Edge> edges = hook();
    Point centroid = new Point(14, 21);
    for (int i = 0; i < ANGLES; i++) {
      double angle = Math.PI * i / ANGLES - Math.PI / 2;
      Point left = Point.direction(angle).quarterTurn();
      Extent extent = Extent.of(edges, left);
      Fibres fibres = Fibres.of(edges, centroid, angle);
      assertThat(fibres.positive())
          .isCloseTo(extent.greatest() - centroid.dot(left), within(1e-11));
      assertThat(fibres.negative()).isCloseTo(centroid.dot(left) - extent.least(), within(1e-11));
    }
  }

  @Test
  void piecesOfTheBoundaryBoundTheHalfPlane() {
    List<Edge> edges = hook();
    for (int i = 0; i < ANGLES; i++) {
      double angle = Math.PI * i / ANGLES;
      Point along = Point.direction(angle);
      Point origin = new Point(14 + i % 7, 21 - i % 5);
      List<Edge> pieces =
          HalfBoundary.leftOf(edges, origin, along).stream().map(HalfBoundary.Piece::part).toList();
      AreaIntegrals sums = BoundaryIntegrals.about(origin, pieces);
      HalfPlane half = HalfPlane.leftOf(edges, origin, along);
      Point left = along.quarterTurn();
      assertThat(sums.area()).isCloseTo(half.area(), within(1e-9));
      assertThat(sums.firstY() * left.y() + sums.firstZ() * left.z())
          .isCloseTo(half.firstMoment(), within(1e-8));
    }
  }
}
