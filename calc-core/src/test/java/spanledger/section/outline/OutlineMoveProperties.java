package spanledger.section.outline;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;

/** Moving, turning, mirroring and scaling an outline changes its properties as it must. */
class OutlineMoveProperties {

  @Property(tries = 60)
  void movesChangeNothingThatTheyShouldNot(
      @ForAll @DoubleRange(min = -3, max = 3) double angle,
      @ForAll @DoubleRange(min = -500, max = 500) double dy,
      @ForAll @DoubleRange(min = 0.1, max = 10) double scale,
      @ForAll boolean mirrored) {
    Outline start = slottedPost();
    Outline moved = start.moved(new Similarity(mirrored, angle, scale, new Point(dy, -dy / 3)));
    PlaneProperties a = PlaneProperties.of(start);
    PlaneProperties b = PlaneProperties.of(moved);
    // A shift of ten times the size costs one digit in the coordinates themselves.
    near(b.area(), a.area() * scale * scale, 1e-11);
    near(b.perimeter(), a.perimeter() * scale, 1e-11);
    double four = Math.pow(scale, 4);
    double three = Math.pow(scale, 3);
    near(b.major().secondMoment(), a.major().secondMoment() * four, 1e-11);
    near(b.minor().secondMoment(), a.minor().secondMoment() * four, 1e-11);
    near(b.major().elasticModulus(), a.major().elasticModulus() * three, 1e-9);
    near(b.minor().plasticModulus(), a.minor().plasticModulus() * three, 1e-9);
    near(
        b.bendingAbout(moved, angle).plasticModulus(),
        a.bendingAbout(start, 0).plasticModulus() * three,
        1e-9);
  }

  static Outline slottedPost() {
    return Outline.of(
        new RoundedPolygon()
            .corner(0, 0, 2)
            .corner(50, 0, 2)
            .corner(50, 20, 0.5)
            .corner(42, 20)
            .corner(42, 34)
            .corner(50, 34, 0.5)
            .corner(50, 60, 2)
            .corner(0, 60, 2)
            .close(),
        Ring.circle(new Point(20, 15), 8),
        new RoundedPolygon()
            .corner(4, 30, 3)
            .corner(38, 30, 3)
            .corner(38, 56, 3)
            .corner(4, 56, 3)
            .close());
  }

  private static void near(double actual, double expected, double relative) {
    assertThat(actual).isCloseTo(expected, Percentage.withPercentage(relative * 100));
  }
}
