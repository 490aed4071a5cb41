package spanledger.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spanledger.section.SectionAssertions.ROUNDING;
import static spanledger.section.SectionAssertions.assertNear;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/**
 * Areas, second moments and moduli against rectangles added up the long way, and against published
 * closed forms.
 */
class SectionGeometryTest {

  /**
   * TALAT 2301, example 5.1: SHS 70x70x1.9, I = 400.4e3 mm⁴ (printed 4.004e5), b/t 66.2/1.9 = 34.8.
   */
  @Test
  void squareTubeOfAPublishedExample() {
    SectionProperties s = SectionProperties.of(RectangularHollow.uniform(70, 70, 1.9));
    assertThat(s.secondMomentY()).isCloseTo(400.4e3, within(50.0));
    assertThat(s.secondMomentZ()).isEqualTo(s.secondMomentY());
    assertThat(s.webSlenderness()).isCloseTo(34.8, within(0.05));
  }

  /**
   * RHS 180x120x6 (the section of TALAT 2301, example 9.2); values worked out independently, to the
   * digits shown.
   */
  @Test
  void rectangularTube() {
    SectionProperties s = SectionProperties.of(RectangularHollow.uniform(180, 120, 6));
    assertThat(s.area()).isCloseTo(3456, within(1e-9));
    assertThat(s.secondMomentY()).isCloseTo(1.5645e7, within(500.0));
    assertThat(s.secondMomentZ()).isCloseTo(8.284e6, within(500.0));
    assertThat(s.elasticModulusY()).isCloseTo(173837, within(0.5));
    assertThat(s.plasticModulusY()).isCloseTo(209952, within(0.5));
  }

  /** Closed forms of textbooks: π/64·(D⁴-d⁴), (D³-d³)/6, D³/6, bd²/4. */
  @Test
  void roundAndSolidShapes() {
    SectionProperties tube = SectionProperties.of(new RoundHollow(50, 5));
    assertNear("A", tube.area(), Math.PI * 45 * 5, ROUNDING);
    assertNear("I", tube.secondMomentY(), Math.PI / 64 * (6250000 - 2560000), ROUNDING);
    assertNear("W_pl", tube.plasticModulusY(), (125000 - 64000) / 6.0, ROUNDING);
    assertThat(tube.roundSlenderness()).isEqualTo(10);
    SectionProperties round = SectionProperties.of(new SolidRound(20));
    assertNear("W_pl", round.plasticModulusZ(), 8000 / 6.0, ROUNDING);
    assertNear("W_el", round.elasticModulusZ(), Math.PI * 8000 / 32, ROUNDING);
    SectionProperties bar = SectionProperties.of(new SolidRectangle(60, 12));
    assertNear("W_pl", bar.plasticModulusY(), 12 * 3600 / 4.0, ROUNDING);
    assertNear("I_z", bar.secondMomentZ(), 60 * 1728 / 12.0, ROUNDING);
  }

  @Property
  void tubesAgreeWithRectanglesAddedUp(
      @ForAll @DoubleRange(min = 30, max = 200) double h,
      @ForAll @DoubleRange(min = 30, max = 200) double b,
      @ForAll @DoubleRange(min = 1, max = 14) double tw,
      @ForAll @DoubleRange(min = 1, max = 14) double tf) {
    RectangularHollow shape = new RectangularHollow(h, b, tw, tf);
    assertAgrees(SectionProperties.of(shape), Rectangles.of(shape));
  }

  /** Includes channels whose web has more than half of the area. */
  @Property
  void channelsAgreeWithRectanglesAddedUp(
      @ForAll @DoubleRange(min = 30, max = 200) double h,
      @ForAll @DoubleRange(min = 15, max = 100) double b,
      @ForAll @DoubleRange(min = 1, max = 14) double tf,
      @ForAll @DoubleRange(min = 1, max = 14) double tw) {
    Channel shape = new Channel(h, b, tf, tw);
    Rectangles rectangles = Rectangles.of(shape);
    SectionProperties s = SectionProperties.of(shape);
    assertAgrees(s, rectangles);
    double centroid = rectangles.centroidY();
    assertNear(
        "W_el_z",
        s.elasticModulusZ(),
        rectangles.inertiaZ() / Math.max(centroid, b - centroid),
        ROUNDING);
  }

  @Property
  void iSectionsAgreeWithRectanglesAddedUp(
      @ForAll @DoubleRange(min = 30, max = 200) double h,
      @ForAll @DoubleRange(min = 15, max = 100) double b,
      @ForAll @DoubleRange(min = 1, max = 14) double tf,
      @ForAll @DoubleRange(min = 1, max = 14) double tw) {
    ISection shape = new ISection(h, b, tf, tw);
    assertAgrees(SectionProperties.of(shape), Rectangles.of(shape));
  }

  /**
   * About principal axes the product of area vanishes, the sum of second moments stays, and the
   * corners bound the moduli.
   */
  @Property
  void anglesHaveTheirPrincipalAxes(
      @ForAll @DoubleRange(min = 20, max = 150) double h,
      @ForAll @DoubleRange(min = 20, max = 150) double b,
      @ForAll @DoubleRange(min = 2, max = 15) double t) {
    Angle shape = new Angle(h, b, t);
    SectionProperties s = SectionProperties.of(shape);
    Rectangles r = Rectangles.of(shape);
    assertNear("A", s.area(), r.area(), ROUNDING);
    double a = s.principalRotation();
    double difference = (r.inertiaY() - r.inertiaZ()) / 2;
    double sum = r.inertiaY() + r.inertiaZ();
    double product = difference * Math.sin(2 * a) + r.productYz() * Math.cos(2 * a);
    assertThat(product).as("I_uv").isCloseTo(0, within(ROUNDING * sum));
    assertNear("I_u + I_v", s.secondMomentY() + s.secondMomentZ(), sum, ROUNDING);
    double aboutU = sum / 2 + difference * Math.cos(2 * a) - r.productYz() * Math.sin(2 * a);
    assertNear("I_u", s.secondMomentY(), aboutU, ROUNDING);
    double[][] corners = {{0, 0}, {b, 0}, {b, t}, {t, t}, {t, h}, {0, h}};
    double farU = 0;
    double farV = 0;
    for (double[] corner : corners) {
      double y = corner[0] - r.centroidY();
      double z = corner[1] - r.centroidZ();
      farU = Math.max(farU, Math.abs(y * Math.cos(a) + z * Math.sin(a)));
      farV = Math.max(farV, Math.abs(z * Math.cos(a) - y * Math.sin(a)));
    }
    assertNear("W_u", s.elasticModulusY(), aboutU / farV, ROUNDING);
    assertNear("W_v", s.elasticModulusZ(), (sum - aboutU) / farU, ROUNDING);
  }

  /** The axis of symmetry of an equal angle is its major axis, halfway between the legs. */
  @Test
  void equalAnglesAreTurnedByHalfARightAngle() {
    SectionProperties s = SectionProperties.of(new Angle(50, 50, 5));
    assertThat(s.principalRotation()).isCloseTo(Math.PI / 4, within(1e-12));
    assertThat(s.outstandSlenderness()).isEqualTo(9);
  }

  /** A tube whose walls meet is solid: the limit of area, second moment and moduli. */
  @Property
  void tubesWithWallsThatMeetAreSolid(
      @ForAll @DoubleRange(min = 20, max = 200) double h,
      @ForAll @DoubleRange(min = 20, max = 200) double b) {
    double nearly = 1 - 1e-9;
    SectionProperties tube =
        SectionProperties.of(new RectangularHollow(h, b, b / 2 * nearly, h / 2 * nearly));
    SectionProperties solid = SectionProperties.of(new SolidRectangle(h, b));
    assertNear("A", tube.area(), solid.area(), 1e-8);
    assertNear("I_y", tube.secondMomentY(), solid.secondMomentY(), 1e-8);
    assertNear("I_z", tube.secondMomentZ(), solid.secondMomentZ(), 1e-8);
    assertNear("W_pl_y", tube.plasticModulusY(), solid.plasticModulusY(), 1e-8);
    SectionProperties roundTube = SectionProperties.of(new RoundHollow(h, h / 2 * nearly));
    SectionProperties round = SectionProperties.of(new SolidRound(h));
    assertNear("A", roundTube.area(), round.area(), 1e-8);
    assertNear("A_v", roundTube.shearAreaY(), round.shearAreaY(), 1e-8);
    assertNear("tau_A", roundTube.peakShearAreaY(), round.peakShearAreaY(), 1e-8);
    assertNear("W_t", roundTube.torsionModulus(), round.torsionModulus(), 1e-8);
  }

  @Test
  void wallsByKindOfShape() {
    SectionProperties channel = SectionProperties.of(new Channel(100, 50, 6, 4));
    assertThat(channel.webSlenderness()).isEqualTo(88 / 4.0);
    assertThat(channel.outstandSlenderness()).isEqualTo(46 / 6.0);
    assertThat(channel.innerFlangeSlenderness()).isZero();
    SectionProperties beam = SectionProperties.of(new ISection(100, 60, 6, 4));
    assertThat(beam.outstandSlenderness()).isEqualTo(28 / 6.0);
    assertThat(beam.platesKnown()).isTrue();
  }

  private static void assertAgrees(SectionProperties s, Rectangles r) {
    assertNear("A", s.area(), r.area(), ROUNDING);
    assertNear("I_y", s.secondMomentY(), r.inertiaY(), ROUNDING);
    assertNear("I_z", s.secondMomentZ(), r.inertiaZ(), ROUNDING);
    assertNear("W_pl_y", s.plasticModulusY(), r.plasticY(), ROUNDING);
    assertNear("W_pl_z", s.plasticModulusZ(), r.plasticZ(), ROUNDING);
  }
}
