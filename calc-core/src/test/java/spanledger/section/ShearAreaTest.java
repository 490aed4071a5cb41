package spanledger.section;

import static org.assertj.core.api.Assertions.assertThat;
import static spanledger.section.SectionAssertions.ROUNDING;
import static spanledger.section.SectionAssertions.assertDeviates;
import static spanledger.section.SectionAssertions.assertNear;
import static spanledger.section.ShearFlow.wall;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import spanledger.provenance.Source;

/**
 * Shear areas against shear flow integrated numerically along wall midlines, and against textbook
 * values.
 */
class ShearAreaTest {

  /**
   * The integrand is a polynomial of degree four; Simpson's rule on 400 panels leaves errors far
   * below this.
   */
  private static final double INTEGRATION = 1e-8;

  /** What midlines differ from real walls by, for the thin walls used here. */
  private static final double THIN = 0.06;

  @Property
  void tubes(
      @ForAll @DoubleRange(min = 40, max = 200) double h,
      @ForAll @DoubleRange(min = 40, max = 200) double b,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double tw,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double tf) {
    SectionProperties s = SectionProperties.of(new RectangularHollow(h, b, tw, tf));
    double hm = h - tf;
    double bm = b - tw;
    ShearFlow.Wall alongZ = wall(hm / 2, 0, hm / 2, tw, wall(hm / 2, hm / 2, bm / 2, tf));
    ShearFlow.Wall alongY = wall(bm / 2, 0, bm / 2, tf, wall(bm / 2, bm / 2, hm / 2, tw));
    assertNear("A_v_z", s.shearAreaZ(), ShearFlow.effectiveArea(alongZ, 4), INTEGRATION);
    assertNear("A_v_y", s.shearAreaY(), ShearFlow.effectiveArea(alongY, 4), INTEGRATION);
    assertDeviates("tau_A_z", s.peakShearAreaZ(), ShearFlow.peakArea(alongZ, 4), -THIN, THIN);
    assertDeviates("tau_A_y", s.peakShearAreaY(), ShearFlow.peakArea(alongY, 4), -THIN, THIN);
  }

  @Property
  void channels(
      @ForAll @DoubleRange(min = 40, max = 200) double h,
      @ForAll @DoubleRange(min = 30, max = 100) double b,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double tf,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double tw) {
    SectionProperties s = SectionProperties.of(new Channel(h, b, tf, tw));
    double hm = h - tf;
    double bm = b - tw / 2;
    double e = bm * bm * tf / (2 * bm * tf + hm * tw);
    ShearFlow.Wall alongZ = wall(hm / 2, 0, hm / 2, tw, wall(hm / 2, hm / 2, bm, tf));
    ShearFlow.Wall alongY = wall(-e, -e, hm / 2, tw, wall(bm - e, -e, bm, tf));
    assertNear("A_v_z", s.shearAreaZ(), ShearFlow.effectiveArea(alongZ, 2), INTEGRATION);
    assertNear("A_v_y", s.shearAreaY(), ShearFlow.effectiveArea(alongY, 2), INTEGRATION);
    assertDeviates("tau_A_z", s.peakShearAreaZ(), ShearFlow.peakArea(alongZ, 2), -THIN, THIN);
    assertDeviates("tau_A_y", s.peakShearAreaY(), ShearFlow.peakArea(alongY, 2), -THIN, THIN);
  }

  @Property
  void iSections(
      @ForAll @DoubleRange(min = 40, max = 200) double h,
      @ForAll @DoubleRange(min = 30, max = 100) double b,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double tf,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double tw) {
    SectionProperties s = SectionProperties.of(new ISection(h, b, tf, tw));
    double hm = h - tf;
    ShearFlow.Wall flange = wall(hm / 2, hm / 2, b / 2, tf);
    ShearFlow.Wall alongZ = wall(hm / 2, 0, hm / 2, tw, flange, flange);
    ShearFlow.Wall alongY = wall(b / 2, 0, b / 2, tf);
    assertNear("A_v_z", s.shearAreaZ(), ShearFlow.effectiveArea(alongZ, 2), INTEGRATION);
    assertNear("A_v_y", s.shearAreaY(), ShearFlow.effectiveArea(alongY, 4), INTEGRATION);
    assertDeviates("tau_A_z", s.peakShearAreaZ(), ShearFlow.peakArea(alongZ, 2), -THIN, THIN);
    assertNear("tau_A_y", s.peakShearAreaY(), ShearFlow.peakArea(alongY, 4), INTEGRATION);
  }

  /**
   * What the shorter leg is taken to carry is never more than what both legs give along the
   * principal axes.
   */
  @Property
  void anglesAreOnTheSafeSide(
      @ForAll @DoubleRange(min = 1, max = 6) double ratio,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double t) {
    double width = 50;
    double depth = 50 * ratio;
    SectionProperties s = SectionProperties.of(new Angle(depth, width, t));
    double a = s.principalRotation();
    double yc = width * width / 2 / (width + depth);
    double zc = depth * depth / 2 / (width + depth);
    double bound = 1 + 3 * t / width; // midlines against corners
    for (double turn : new double[] {a, a - Math.PI / 2}) {
      double heel = -zc * Math.cos(turn) + yc * Math.sin(turn);
      double top = (depth - zc) * Math.cos(turn) + yc * Math.sin(turn);
      double right = -zc * Math.cos(turn) - (width - yc) * Math.sin(turn);
      ShearFlow.Wall flow = wall(heel, right, width, t, wall(top, heel, depth, t));
      assertThat(s.shearAreaZ()).isLessThan(ShearFlow.effectiveArea(flow, 1) * bound);
      assertThat(s.peakShearAreaZ()).isLessThan(ShearFlow.peakArea(flow, 1) * bound);
    }
  }

  /** Thin equal legs: 5/6 of one leg along both principal axes. */
  @Test
  void thinEqualAngle() {
    double leg = 50;
    double t = 0.1;
    double r = Math.sqrt(0.5);
    ShearFlow.Wall alongV = wall(0, -leg * r, leg, t, wall(leg * r, 0, leg, t));
    assertNear("A_v", ShearFlow.effectiveArea(alongV, 1), leg * t * 5 / 6, INTEGRATION);
    SectionProperties s = SectionProperties.of(new Angle(leg, leg, t));
    assertNear("A_v", s.shearAreaY(), leg * t * 5 / 6, ROUNDING);
  }

  /**
   * Roark's Formulas for Stress and Strain, shear deflection factors F: 6/5 rectangle, 2 thin tube,
   * 10/9 circle (with 7/6 by Cowper).
   */
  @Test
  void textbookFactors() {
    SectionProperties bar = SectionProperties.of(new SolidRectangle(60, 12));
    assertNear("rectangle", bar.area() / bar.shearAreaZ(), 6.0 / 5, ROUNDING);
    assertNear("rectangle", bar.area() / bar.peakShearAreaZ(), 3.0 / 2, ROUNDING);
    SectionProperties tube = SectionProperties.of(new RoundHollow(100, 0.1));
    assertNear("thin tube", tube.area() / tube.shearAreaZ(), 2, 1e-2);
    assertNear("thin tube", tube.area() / tube.peakShearAreaZ(), 2, 1e-2);
    SectionProperties round = SectionProperties.of(new SolidRound(20));
    assertNear("circle", round.area() / round.shearAreaZ(), 7.0 / 6, ROUNDING);
    assertNear("circle", round.area() / round.peakShearAreaZ(), 4.0 / 3, ROUNDING);
  }

  /**
   * What a row of properties falls back on: against peak stress, shapes have more than half of
   * their shear area. Webs far thinner than their flanges could have less, so the thicknesses here
   * differ by four times at most.
   */
  @Property
  void peakShearAreasAreMoreThanHalfOfShearAreas(
      @ForAll @DoubleRange(min = 40, max = 200) double h,
      @ForAll @DoubleRange(min = 40, max = 200) double b,
      @ForAll @DoubleRange(min = 1, max = 10) double thickness,
      @ForAll @DoubleRange(min = 0.25, max = 4) double ratio) {
    double other = Math.min(thickness * ratio, 15);
    Stream.of(
            new RectangularHollow(h, b, thickness, other),
            new Channel(h, b, thickness, other),
            new ISection(h, b, thickness, other),
            new RoundHollow(h, thickness),
            new SolidRectangle(h, b),
            new Angle(h, b, thickness))
        .forEach(
            shape -> {
              SectionProperties s = SectionProperties.of(shape);
              assertThat(s.peakShearAreaY()).as("%s", shape).isGreaterThan(s.shearAreaY() / 2);
              assertThat(s.peakShearAreaZ()).as("%s", shape).isGreaterThan(s.shearAreaZ() / 2);
            });
  }

  @Test
  void rowsOfPropertiesFallBackOnTheSafeSide() {
    PropertyRow row =
        new PropertyRow(
            1200,
            480,
            600,
            2e6,
            7e5,
            2e4,
            4e4,
            2e4,
            1e3,
            OptionalDouble.of(4.8e4),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(540),
            2,
            3,
            Optional.empty(),
            Source.declared("test"));
    SectionProperties s = SectionProperties.of(row);
    assertThat(s.plasticModulusY()).isEqualTo(4.8e4);
    assertThat(s.plasticModulusZ()).isEqualTo(2e4);
    assertNear("tau_A_y", s.peakShearAreaY(), 240, ROUNDING);
    assertThat(s.peakShearAreaZ()).isEqualTo(540);
    assertThat(s.platesKnown()).isFalse();
  }
}
