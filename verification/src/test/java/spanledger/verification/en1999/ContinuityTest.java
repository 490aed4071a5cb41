package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.material.BucklingClass;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.en1999.En1999Procedures;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Working;

/** Resistances just below and just above the limits where a branch changes. */
class ContinuityTest {

  private static final double STEP = 1e-7;

  private static PreparedMember tube(double wall, BucklingClass alloyClass) {
    return GivenMember.prepared(
        1.1,
        GivenMember.equalLengths(
            GivenMember.shape("tube", 100, 60, wall, wall),
            GivenMember.alloy(250, 300, alloyClass),
            1000));
  }

  private static double last(PreparedMember member, String procedure, String label, String symbol) {
    Working found = null;
    for (Working working : member.workings()) {
      boolean named = working.procedure().procedure().name().equals(procedure);
      found = named && working.label().startsWith(label) ? working : found;
    }
    return Objects.requireNonNull(found).value(symbol);
  }

  /**
   * The wall of a flange of 60 - 2t at b/t = limit; ε = 1. Bending about y compresses it evenly.
   */
  static Stream<Arguments> limits() {
    return Stream.of(
        Arguments.of(BucklingClass.A, 11.0),
        Arguments.of(BucklingClass.A, 16.0),
        Arguments.of(BucklingClass.A, 22.0),
        Arguments.of(BucklingClass.B, 13.0),
        Arguments.of(BucklingClass.B, 16.5),
        Arguments.of(BucklingClass.B, 18.0));
  }

  @ParameterizedTest
  @MethodSource("limits")
  void momentResistanceAtClassLimits(BucklingClass alloyClass, double limit) {
    double wall = 60 / (limit + 2);

    double thinner =
        last(tube(wall * (1 - STEP), alloyClass), "en1999-effective-bending", "M_y > 0", "M_Rd");
    double thicker =
        last(tube(wall * (1 + STEP), alloyClass), "en1999-effective-bending", "M_y > 0", "M_Rd");

    assertThat(thicker)
        .as("the slope alone gives some 1e-6; source: EN 1999-1-1, Table 6.4 (from memory)")
        .isCloseTo(thinner, within(3e-6 * thinner));
  }

  @Test
  void compressionResistanceAtTheLimitOfClass4() {
    double wall = 100 / 24.0;

    double thinner =
        last(
            tube(wall * (1 - STEP), BucklingClass.A),
            "en1999-effective-compression",
            "compression",
            "N_c_Rd");
    double thicker =
        last(
            tube(wall * (1 + STEP), BucklingClass.A),
            "en1999-effective-compression",
            "compression",
            "N_c_Rd");

    assertThat(thicker).isCloseTo(thinner, within(3e-6 * thinner));
  }

  private static CompiledProcedure named(String name) {
    return En1999Procedures.all().stream()
        .filter(procedure -> procedure.name().equals(name))
        .findFirst()
        .orElseThrow()
        .compile();
  }

  @Test
  void shearAreaWhereWebsBeginToBuckle() {
    CompiledProcedure shear = named("en1999-shear-wall");

    double stocky = shear.run(117 * (1 - STEP), 3, 100, 0, 0, 1, 0, 250, 70000, 39)[last(shear)];
    double slender = shear.run(117 * (1 + STEP), 3, 100, 0, 0, 1, 0, 250, 70000, 39)[last(shear)];

    assertThat(slender).isCloseTo(stocky, within(1e-6 * stocky));
  }

  private static int last(CompiledProcedure procedure) {
    return procedure.slotCount() - 1;
  }

  /**
   * Closed forms hold where the shear centre is nearly on an axis; the search takes over beyond.
   */
  @Test
  void criticalForceWhereClosedFormsGiveWayToTheSearch() {
    CompiledProcedure twist = named("en1999-torsional-buckling");
    double[] off = {0.0999, 0.1001};
    double[] critical = new double[2];
    for (int i = 0; i < 2; i++) {
      // i_s is near 100 mm, so that y_s of 0.1 mm is the limit of one thousandth.
      double[] values =
          twist.run(
              1000, 5e6, 1.4e6, 8000, 1e9, off[i], 60, 2000, 860e3, 240e3, 1000, 70000, 27000, 200,
              1.1, 0.35, 0.4);
      critical[i] = values[twist.slot("N_cr")];
      assertThat(values[twist.slot("i_s")]).isCloseTo(100, within(0.1));
    }

    assertThat(critical[1])
        .as("eight passes of Newton's method, and coupling of a thousandth squared")
        .isCloseTo(critical[0], within(1e-5 * critical[0]));
  }

  @Test
  void whatIsLeftOfTheSearchIsOnTheSafeSide() {
    CompiledProcedure twist = named("en1999-torsional-buckling");
    for (double forceY : new double[] {1e4, 1e5, 1e6}) {
      for (double forceZ : new double[] {1e4, 1e5, 1e6}) {
        double[] values =
            twist.run(
                1000, 5e6, 1.4e6, 8000, 1e9, 20, 40, 2000, forceY, forceZ, 1000, 70000, 27000, 200,
                1.1, 0.35, 0.4);

        assertThat(values[twist.slot("n_r")]).isBetween(-1e-12, 1e-4);
      }
    }
  }

  /**
   * The curve of lateral-torsional buckling changes between class 2 and class 3 by the standard
   * itself: the reduction jumps. The jump is held to its size here, so that it is known.
   */
  @Test
  void lateralCurveJumpsBetweenClass2And3AsTheStandardHasIt() {
    CompiledProcedure lateral = named("en1999-lateral-torsional");
    double[] inputs = {
      4.6e6, 5.4e5, 11000, 2.8e9, 0, 2500, 1, 0, 1, 1, 1, 0, 6e4, 1, 1e7, 2, 70000, 27000, 200, 0.1,
      0.6, 0.2, 0.4
    };
    double stocky = lateral.run(inputs)[lateral.slot("χ_LT")];
    inputs[15] = 3;
    double slender = lateral.run(inputs)[lateral.slot("χ_LT")];

    assertThat(slender).isLessThan(stocky).isGreaterThan(0.85 * stocky);
  }
}
