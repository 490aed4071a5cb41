package spanledger.section.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Exact properties against closed forms (any textbook of strength of materials). Tolerance 1e-12
 * relative: a few roundings of double precision.
 */
class PlanePropertiesTest {

  private static final Percentage EXACT = Percentage.withPercentage(1e-10);

  @Test
  void rectangle() {
    PlaneProperties p = PlaneProperties.of(Outline.of(Ring.polygon(7, 3, 37, 3, 37, 63, 7, 63)));
    close(p.area(), 1800);
    close(p.perimeter(), 180);
    close(p.centroid().y(), 22);
    close(p.centroid().z(), 33);
    close(p.momentY(), 30 * Math.pow(60, 3) / 12);
    close(p.momentZ(), 60 * Math.pow(30, 3) / 12);
    assertThat(p.productYZ()).isCloseTo(0, Offset.offset(1e-7));
    close(p.y().elasticModulus(), 30 * 3600 / 6.0);
    close(p.y().plasticModulus(), 30 * 3600 / 4.0);
    close(p.z().plasticModulus(), 60 * 900 / 4.0);
    assertThat(p.majorAngle()).isCloseTo(0, Offset.offset(1e-12));
  }

  @Test
  void circleAndTube() {
    PlaneProperties disc = PlaneProperties.of(Outline.of(Ring.circle(new Point(100, -50), 20)));
    close(disc.area(), Math.PI * 400);
    close(disc.momentY(), Math.PI * 160000 / 4);
    close(disc.y().plasticModulus(), Math.pow(40, 3) / 6);
    close(disc.y().positiveFibre(), 20);
    PlaneProperties tube =
        PlaneProperties.of(
            Outline.of(Ring.circle(new Point(0, 0), 24), Ring.circle(new Point(0, 0), 20)));
    close(tube.momentZ(), Math.PI * (Math.pow(24, 4) - Math.pow(20, 4)) / 4);
    close(tube.y().plasticModulus(), (Math.pow(48, 3) - Math.pow(40, 3)) / 6);
    close(tube.perimeter(), Math.PI * 88);
  }

  @Test
  void halfDisc() {
    double r = 30;
    Point right = new Point(r, 0);
    Point left = new Point(-r, 0);
    PlaneProperties p =
        PlaneProperties.of(
            Outline.of(
                new Ring(List.of(new ArcEdge(right, left, 1), new StraightEdge(left, right)))));
    close(p.area(), Math.PI * r * r / 2);
    close(p.centroid().z(), 4 * r / (3 * Math.PI));
    close(p.momentY(), Math.pow(r, 4) * (Math.PI / 8 - 8 / (9 * Math.PI)));
    close(p.momentZ(), Math.PI * Math.pow(r, 4) / 8);
    close(p.y().positiveFibre(), r - 4 * r / (3 * Math.PI));
  }

  @Test
  void quarterFilletLeftOutOfASquare() {
    // Area between a square corner of side r and the inscribed quarter circle: (1 − π/4) r².
    double r = 8;
    Ring ring =
        new Ring(
            List.of(
                new StraightEdge(new Point(0, 0), new Point(r, 0)),
                new ArcEdge(new Point(r, 0), new Point(0, r), -Math.tan(Math.PI / 8)),
                new StraightEdge(new Point(0, r), new Point(0, 0))));
    PlaneProperties p = PlaneProperties.of(Outline.of(ring));
    close(p.area(), (1 - Math.PI / 4) * r * r);
    // Centroid at r (10 − 3π)/(12 − 3π) from the corner.
    close(p.centroid().y(), r * (10 - 3 * Math.PI) / (12 - 3 * Math.PI));
    close(p.centroid().z(), p.centroid().y());
    close(p.majorAngle(), Math.PI / 4);
  }

  @Test
  void angleSectionTurnsItsPrincipalAxes() {
    Outline angle = Outline.of(Ring.polygon(0, 0, 50, 0, 50, 5, 5, 5, 5, 50, 0, 50));
    PlaneProperties p = PlaneProperties.of(angle);
    // Equal legs: the stiff axis lies at right angles to the axis of symmetry.
    close(p.majorAngle(), Math.PI / 4 * Math.signum(p.majorAngle()));
    close(p.major().secondMoment() + p.minor().secondMoment(), p.momentY() + p.momentZ());
    close(p.momentAbout(p.majorAngle()), p.major().secondMoment());
    assertThat(p.productYZ()).isNegative();
    assertThat(p.majorAngle()).isPositive();
  }

  @Test
  void unequalPlasticHalves() {
    // T of flange 60 x 10 on a web 10 x 60: the plastic axis is the junction, W = 600·5 + 600·30.
    Outline tee =
        Outline.of(Ring.polygon(25, 0, 35, 0, 35, 60, 60, 60, 60, 70, 0, 70, 0, 60, 25, 60));
    PlaneProperties p = PlaneProperties.of(tee);
    close(p.centroid().z() + p.y().plasticAxis(), 60);
    close(p.y().plasticModulus(), 600 * 5 + 600 * 30);
    close(p.z().plasticModulus(), 10 * 3600 / 4.0 + 60 * 100 / 4.0);
  }

  @Test
  void partsActingTogetherAreTheSumAboutTheCommonCentroid() {
    Outline low = Outline.of(Ring.polygon(0, 0, 20, 0, 20, 10, 0, 10));
    Outline high = low.moved(Similarity.shift(0, 10));
    PlaneProperties p = PlaneProperties.ofPartsActingTogether(List.of(low, high));
    close(p.momentY(), 20 * 8000 / 12.0);
    close(p.y().plasticModulus(), 20 * 400 / 4.0);
  }

  private static void close(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, EXACT);
  }
}
