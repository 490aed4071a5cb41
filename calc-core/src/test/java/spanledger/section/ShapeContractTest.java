package spanledger.section;

import static org.assertj.core.api.Assertions.assertThat;
import static spanledger.section.SectionAssertions.ROUNDING;
import static spanledger.section.SectionAssertions.assertNear;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** What holds for every shape. */
class ShapeContractTest {

  /** One of each shape, in sizes that grow with k. */
  private static final List<DoubleFunction<Shape>> SHAPES =
      List.of(
          k -> new RectangularHollow(150 * k, 50 * k, 3 * k, 4 * k),
          k -> new RoundHollow(48.3 * k, 4 * k),
          k -> new SolidRectangle(60 * k, 12 * k),
          k -> new SolidRound(20 * k),
          k -> new Channel(100 * k, 50 * k, 6 * k, 4 * k),
          k -> new Channel(300 * k, 30 * k, 4 * k, 12 * k),
          k -> new Angle(80 * k, 50 * k, 6 * k),
          k -> new ISection(100 * k, 60 * k, 6 * k, 4 * k),
          ShapeContractTest::row);

  static Stream<Shape> shapes() {
    return SHAPES.stream().map(made -> made.apply(1));
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void everyShapeHasEveryPropertyUnderItsSymbol(Shape shape) {
    for (SectionSymbol symbol : SectionSymbol.values()) {
      assertThat(shape.procedure().symbol(symbol.symbol()).dimension())
          .as(symbol.symbol())
          .isEqualTo(symbol.dimension());
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void everyStepNamesItsSource(Shape shape) {
    assertThat(shape.procedure().steps())
        .allSatisfy(step -> assertThat(step.source().work()).isNotBlank());
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void theMajorAxisIsTheStrongerOne(Shape shape) {
    SectionProperties s = SectionProperties.of(shape);
    assertThat(s.secondMomentY()).isGreaterThanOrEqualTo(s.secondMomentZ());
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void propertiesStandInTheirNaturalOrder(Shape shape) {
    SectionProperties s = SectionProperties.of(shape);
    assertThat(s.plasticModulusY()).isGreaterThanOrEqualTo(s.elasticModulusY());
    assertThat(s.plasticModulusZ()).isGreaterThanOrEqualTo(s.elasticModulusZ());
    assertThat(s.shearAreaY()).isBetween(0.0, s.area());
    assertThat(s.shearAreaZ()).isBetween(0.0, s.area());
    assertThat(s.peakShearAreaY()).isBetween(0.0, s.area());
    assertThat(s.peakShearAreaZ()).isBetween(0.0, s.area());
    // Of all outlines with these second moments none has a larger torsion constant than their sum.
    assertThat(s.torsionConstant()).isBetween(0.0, s.secondMomentY() + s.secondMomentZ());
    assertThat(shape.thinnestWall()).isBetween(0.0, shape.thickestWall());
  }

  /**
   * Given a shape enlarged k times, an area grows with k², a modulus with k³, a second moment with
   * k⁴, and ratios stay.
   */
  @Property
  void propertiesGrowWithTheirPowerOfLength(@ForAll @DoubleRange(min = 0.01, max = 100) double k) {
    for (DoubleFunction<Shape> made : SHAPES) {
      Shape shape = made.apply(1);
      double[] plain = shape.compiled().run(shape.inputs());
      double[] enlarged = shape.compiled().run(made.apply(k).inputs());
      for (SectionSymbol symbol : SectionSymbol.values()) {
        int slot = shape.compiled().slot(symbol.symbol());
        double power = symbol.dimension().length() / (double) Dimension.LENGTH.length();
        assertNear(
            shape.kind() + " " + symbol.symbol(),
            enlarged[slot],
            plain[slot] * Math.pow(k, power),
            ROUNDING);
      }
    }
  }

  /** Turning a shape by a right angle swaps its axes. */
  @Property
  void turnedShapesSwapTheirAxes(
      @ForAll @DoubleRange(min = 30, max = 200) double h,
      @ForAll @DoubleRange(min = 30, max = 200) double b,
      @ForAll @DoubleRange(min = 1, max = 12) double tw,
      @ForAll @DoubleRange(min = 1, max = 12) double tf) {
    assertSwapped(new RectangularHollow(h, b, tw, tf), new RectangularHollow(b, h, tf, tw));
    assertSwapped(new SolidRectangle(h, b), new SolidRectangle(b, h));
  }

  private static void assertSwapped(Shape shape, Shape turned) {
    SectionProperties s = SectionProperties.of(shape);
    SectionProperties t = SectionProperties.of(turned);
    assertNear("A", s.area(), t.area(), ROUNDING);
    assertNear("I", s.secondMomentY(), t.secondMomentZ(), ROUNDING);
    assertNear("W_el", s.elasticModulusY(), t.elasticModulusZ(), ROUNDING);
    assertNear("W_pl", s.plasticModulusY(), t.plasticModulusZ(), ROUNDING);
    assertNear("A_v", s.shearAreaY(), t.shearAreaZ(), ROUNDING);
    assertNear("tau_A", s.peakShearAreaY(), t.peakShearAreaZ(), ROUNDING);
    assertNear("I_t", s.torsionConstant(), t.torsionConstant(), ROUNDING);
    assertNear("W_t", s.torsionModulus(), t.torsionModulus(), ROUNDING);
    assertThat(s.webSlenderness()).isEqualTo(t.innerFlangeSlenderness());
  }

  private static Shape row(double k) {
    double area = 1200 * k * k;
    double modulus = 4e4 * k * k * k;
    double inertia = 2e6 * Math.pow(k, 4);
    return new PropertyRow(
        area,
        area * 0.4,
        area * 0.5,
        inertia,
        inertia / 3,
        inertia / 100,
        modulus,
        modulus / 2,
        modulus / 40,
        OptionalDouble.of(modulus * 1.2),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(area * 0.45),
        2 * k,
        3 * k,
        Optional.empty(),
        Source.declared("test"));
  }
}
