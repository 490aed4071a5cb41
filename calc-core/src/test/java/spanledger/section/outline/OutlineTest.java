package spanledger.section.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is and what is not an outline. */
class OutlineTest {

  private static final Ring SQUARE = Ring.polygon(0, 0, 40, 0, 40, 40, 0, 40);

  @Test
  void anOpenRingNamesTheGap() {
    assertThatThrownBy(
            () ->
                new Ring(
                    List.of(
                        new StraightEdge(new Point(0, 0), new Point(10, 0)),
                        new StraightEdge(new Point(10, 0), new Point(10, 10)),
                        new StraightEdge(new Point(10, 10), new Point(0, 0.5)))))
        .isInstanceOf(InvalidOutlineException.class)
        .hasMessage(
            "At (0, 0.5) mm: edge 3 of 3 ends here, but the next starts at (0, 0), a gap of 0.5 mm."
                + " Close the ring.");
  }

  @Test
  void aRingThatCrossesItselfNamesTheCrossing() {
    assertThatThrownBy(() -> Outline.of(Ring.polygon(0, 0, 10, 10, 10, 0, 0, 10)))
        .hasMessageContaining("At (5, 5) mm: the outer ring crosses or touches itself.");
  }

  @Test
  void aWallWithoutThicknessIsFound() {
    assertThatThrownBy(() -> Outline.of(Ring.polygon(0, 0, 10, 0, 10, 10, 10, 20, 10, 10, 0, 10)))
        .hasMessageContaining("the outer ring crosses or touches itself");
    assertThatThrownBy(() -> Outline.of(SQUARE, Ring.polygon(0, 10, 20, 10, 20, 20, 0, 20)))
        .hasMessageContaining("the outer ring and hole 1 touch");
  }

  @Test
  void aRepeatedPointIsFound() {
    assertThatThrownBy(() -> Ring.polygon(0, 0, 10, 0, 10, 0, 10, 10))
        .hasMessageContaining("At (10, 0) mm: edge 2 of 4 starts and ends at the same point.");
  }

  @Test
  void arcsThatAreNoneAreFound() {
    Point a = new Point(0, 0);
    Point b = new Point(10, 0);
    for (double bulge : new double[] {0, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new Ring(List.of(new ArcEdge(a, b, bulge), new ArcEdge(b, a, 1))))
          .hasMessageContaining("At (0, 0) mm: edge 1 of 2 is an arc to (10, 0)");
    }
  }

  @Test
  void holesOutsideAndOverlappingHolesAreFound() {
    assertThatThrownBy(() -> Outline.of(SQUARE, Ring.polygon(30, 10, 50, 10, 50, 20, 30, 20)))
        .hasMessageContaining("hole 1 reaches outside the outer ring");
    assertThatThrownBy(
            () ->
                Outline.of(
                    SQUARE,
                    Ring.polygon(10, 10, 20, 10, 20, 20, 10, 20),
                    Ring.polygon(15, 15, 25, 15, 25, 25, 15, 25)))
        .hasMessageContaining("hole 1 and hole 2 overlap");
  }

  @Test
  void numbersThatAreNoneAreFound() {
    assertThatThrownBy(() -> Ring.polygon(0, 0, Double.NaN, 0, 10, 10))
        .hasMessageContaining("not a number");
  }

  @Test
  void materialIsToTheLeftHoweverRingsAreGiven() {
    Ring hole = Ring.polygon(10, 10, 20, 10, 20, 20, 10, 20);
    Outline outline = Outline.of(SQUARE.reversed(), hole);
    assertThat(outline.outer().signedArea()).isEqualTo(1600);
    assertThat(outline.holes().get(0).signedArea()).isEqualTo(-100);
  }

  @Test
  void anArcAboutACentreIsThatArc() {
    ArcEdge arc = ArcEdge.about(new Point(5, 5), new Point(15, 5), new Point(5, 15), true);
    assertThat(arc.sweep()).isCloseTo(Math.PI / 2, within(1e-15));
    assertThat(arc.radius()).isCloseTo(10, within(1e-13));
    assertThat(arc.centre().distance(new Point(5, 5))).isLessThan(1e-13);
    double r = 10 * Math.sqrt(0.5);
    assertThat(arc.at(0.5).distance(new Point(5 + r, 5 + r))).isLessThan(1e-13);
    ArcEdge long_ = ArcEdge.about(new Point(5, 5), new Point(15, 5), new Point(5, 15), false);
    assertThat(long_.sweep()).isCloseTo(-1.5 * Math.PI, within(1e-14));
    assertThat(long_.at(0.5).distance(new Point(5 - r, 5 - r))).isLessThan(1e-13);
  }

  @Test
  void facesAreRunsOfEdgesOfOneName() {
    Ring ring =
        new RoundedPolygon()
            .corner(0, 0, 2)
            .face("keyed-face")
            .corner(40, 0)
            .corner(40, 30)
            .face("slot-lip")
            .corner(0, 30)
            .face("keyed-face")
            .close();
    List<Face> faces = Outline.of(ring).faces();
    assertThat(faces).extracting(Face::name).containsExactlyInAnyOrder("slot-lip", "keyed-face");
    Face keyed = Outline.of(ring).faces("keyed-face").get(0);
    // Left side, rounded corner, bottom: over the seam of the ring.
    assertThat(keyed.edges()).hasSize(3);
    assertThat(keyed.length()).isCloseTo(28 + Math.PI + 38, within(1e-12));
  }

  @Test
  void aStraightCornerHasNothingToRound() {
    Ring ring =
        new RoundedPolygon()
            .corner(0, 0)
            .corner(10, 0, 2)
            .corner(20, 0)
            .corner(20, 10)
            .corner(0, 10)
            .close();
    assertThat(ring.edges()).hasSize(5);
    assertThat(ring.signedArea()).isEqualTo(200);
  }

  @Test
  void aRadiusThatDoesNotFitIsNamed() {
    assertThatThrownBy(
            () ->
                new RoundedPolygon()
                    .corner(0, 0, 6)
                    .corner(10, 0, 6)
                    .corner(10, 40)
                    .corner(0, 40)
                    .close())
        .hasMessageContaining("At (0, 0) mm: the corner radii here and at (10, 0) need more room");
  }

  private static org.assertj.core.data.Offset<Double> within(double tolerance) {
    return org.assertj.core.data.Offset.offset(tolerance);
  }
}
