package spanledger.verification.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.RoundedPolygon;
import spanledger.section.outline.Similarity;
import spanledger.section.outline.StraightEdge;
import spanledger.section.plate.Plates;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldSolver;

/**
 * Outlines that nobody drew: each is meshed and solved to its target, wherever it lies and however
 * large it is.
 */
class RandomOutlineProperties {

  @Property(tries = 20)
  void openWallsWithFillets(
      @ForAll @DoubleRange(min = 20, max = 120) double width,
      @ForAll @DoubleRange(min = 20, max = 120) double depth,
      @ForAll @DoubleRange(min = 0.5, max = 5.5) double thickness,
      @ForAll @DoubleRange(min = 0.05, max = 3) double fillet,
      @ForAll @DoubleRange(min = -3, max = 3) double angle) {
    double t = thickness;
    assertSolved(
        Outline.of(
            new RoundedPolygon()
                .corner(0, 0, t / 2)
                .corner(width, 0)
                .corner(width, t)
                .corner(t, t, fillet)
                .corner(t, depth - t, fillet)
                .corner(width * 0.8, depth - t)
                .corner(width * 0.8, depth)
                .corner(0, depth, t / 2)
                .close()),
        angle);
  }

  @Property(tries = 20)
  void solidStars(
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @DoubleRange(min = 0.3, max = 0.95) double waist,
      @ForAll @DoubleRange(min = 0, max = 1.5) double radius,
      @ForAll @DoubleRange(min = -3, max = 3) double angle) {
    RoundedPolygon star = new RoundedPolygon();
    for (int i = 0; i < 2 * corners; i++) {
      Point at = Point.direction(Math.PI * i / corners).times(i % 2 == 0 ? 50 : 50 * waist);
      star.corner(at.y(), at.z(), radius);
    }
    assertSolved(Outline.of(star.close()), angle);
  }

  @Property(tries = 15)
  void bentStrips(
      @ForAll @DoubleRange(min = 0.1, max = 3) double half,
      @ForAll @DoubleRange(min = 10, max = 70) double radius,
      @ForAll @DoubleRange(min = 0.4, max = 4) double thickness,
      @ForAll @DoubleRange(min = -3, max = 3) double angle) {
    double bulge = Math.tan(half / 2);
    Point a = Point.direction(-half);
    Point b = Point.direction(half);
    double outside = radius + thickness;
    assertSolved(
        Outline.of(
            new Ring(
                List.of(
                    new ArcEdge(a.times(outside), b.times(outside), bulge),
                    new StraightEdge(b.times(outside), b.times(radius)),
                    new ArcEdge(b.times(radius), a.times(radius), -bulge),
                    new StraightEdge(a.times(radius), a.times(outside))))),
        angle);
  }

  private static void assertSolved(Outline drawn, double angle) {
    double scale = Math.exp(angle);
    Outline outline = drawn.moved(new Similarity(false, angle, scale, new Point(700, -300)));
    FieldProperties found = FieldSolver.standard().solve(outline);
    PlaneProperties plane = PlaneProperties.of(outline);
    double polar = plane.momentY() + plane.momentZ();
    assertThat(found.report().targetMet()).as(found.report().label()).isTrue();
    assertThat(found.torsion().lowerBound()).isLessThanOrEqualTo(found.torsion().upperBound());
    assertThat(found.torsion().upperBound()).isLessThan(polar * 1.001);
    assertThat(found.torsion().warpingConstant()).isNotNegative();
    assertThat(found.shear().areaY()).isBetween(0.0, plane.area());
    assertThat(found.shear().areaZ()).isBetween(0.0, plane.area());
    assertThat(Plates.of(outline).plates()).isNotNull();
  }
}
