package spanledger.verification.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.memberdesign.CriticalLengths;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.stability.FrameStiffness;

/**
 * Buckling lengths from the frame against closed forms: Euler's cases, and the equations behind the
 * alignment charts (O. G. Julian and L. S. Lawrence, 1959; in the commentary of AISC 360), whose
 * assumptions the frames here meet exactly. Their roots are found by Brent's method. Tolerance
 * 2E-6: factors are narrowed to 1E-7, and bars are almost rigid along their axes.
 */
class CriticalLengthsTest {

  private static final double CLOSE = 2e-6;
  private static final double I = 1e6;
  private static final double H = 3000;

  private static double root(DoubleUnaryOperator f, double from, double to) {
    return new BrentSolver(1e-14).solve(200, f::applyAsDouble, from, to);
  }

  /** Smallest root of tan u = u: 4.4934, so π/u = 0.6992. */
  @ParameterizedTest
  @CsvSource({
    "xz, x, 1",
    "xzr, x, 0.69915566",
    "xzr, '', 2",
    "xzr, r, 1",
    "xzr, xr, 0.5",
    "xzr, xzr, 0.5"
  })
  void eulersCases(String base, String top, double expected) {
    PlaneFrame frame =
        new PlaneFrame()
            .node("base", 0, 0, base)
            .node("top", 0, H, top)
            .bar("column", I, 20000, "base", "top");
    assertThat(frame.factor("column")).isCloseTo(expected, within(expected * CLOSE));
  }

  private static PlaneFrame portal(String base, String top, double beamMoment, double span) {
    return new PlaneFrame()
        .node("base left", 0, 0, base)
        .node("base right", span, 0, base)
        .node("top left", 0, H, top)
        .node("top right", span, H, top)
        .bar("left", I, 10000, "base left", "top left")
        .bar("right", I, 10000, "base right", "top right")
        .bar("beam", beamMoment, 0, "top left", "top right");
  }

  /** (G_A G_B u² − 36)/(6(G_A + G_B)) = u/tan u with u = π/K, both G of the same order. */
  @ParameterizedTest
  @CsvSource({"5e5, 2000", "1e6, 3000", "4e6, 3000", "1e6, 9000", "2e5, 6000"})
  void swayFramesOnFixedBases(double beamMoment, double span) {
    double g = (I / H) / (beamMoment / span);
    // A fixed base has G_B = 0: −36/(6 G_A) = u/tan u.
    double u = root(x -> -6 / g * Math.tan(x) - x, Math.PI / 2 + 1e-9, Math.PI - 1e-12);
    double expected = Math.PI / u;
    assertThat(portal("xzr", "", beamMoment, span).factor("left"))
        .isCloseTo(expected, within(expected * CLOSE));
  }

  /** With G_B infinite: u tan u = 6/G_A. */
  @ParameterizedTest
  @CsvSource({"5e5, 2000", "1e6, 3000", "4e6, 3000", "1e6, 9000", "2e5, 6000"})
  void swayFramesOnPinnedBases(double beamMoment, double span) {
    double g = (I / H) / (beamMoment / span);
    double u = root(x -> x * Math.sin(x) - 6 / g * Math.cos(x), 1e-9, Math.PI / 2);
    double expected = Math.PI / u;
    assertThat(portal("xz", "", beamMoment, span).factor("right"))
        .isCloseTo(expected, within(expected * CLOSE));
  }

  /**
   * Braced: G_A G_B/4 u² + (G_A + G_B)/2 (1 − u/tan u) + 2 tan(u/2)/u = 1. The beam bends in single
   * curvature, as the chart takes it.
   */
  @ParameterizedTest
  @CsvSource({"5e5, 2000", "1e6, 3000", "4e6, 3000", "1e6, 9000"})
  void bracedFramesOnFixedBases(double beamMoment, double span) {
    double g = (I / H) / (beamMoment / span);
    double u =
        root(
            x -> g / 2 * (1 - x / Math.tan(x)) + 2 * Math.tan(x / 2) / x - 1,
            Math.PI + 1e-9,
            2 * Math.PI - 1e-6);
    double expected = Math.PI / u;
    assertThat(portal("xzr", "x", beamMoment, span).factor("left"))
        .isCloseTo(expected, within(expected * CLOSE));
  }

  /**
   * A cantilever that holds a pinned column of its own height and load upright: tan u = 2u. The
   * pinned column itself buckles as Euler's bar.
   */
  @Test
  void aLeaningColumnLengthensTheOneItLeansOn() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("base", 0, 0, "xzr")
            .node("foot", 4000, 0, "xz")
            .node("top", 0, H, "")
            .node("head", 4000, H, "")
            .bar("mast", I, 10000, "base", "top")
            .strut("leaning", I, 10000, "foot", "head")
            .strut("tie", I, 0, "top", "head");
    double u = root(x -> Math.sin(x) - 2 * x * Math.cos(x), 0.5, 1.5);
    assertThat(frame.factor("mast")).isCloseTo(Math.PI / u, within(Math.PI / u * CLOSE));
    assertThat(frame.factor("leaning")).isCloseTo(1, within(CLOSE));
  }

  @Test
  void aSupportHalfWayHalvesTheLength() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("base", 0, 0, "xz")
            .node("middle", 0, H / 2, "x")
            .node("top", 0, H, "x")
            .bar("column", I, 50000, "base", "middle", "top");
    assertThat(frame.factor("column")).isCloseTo(0.5, within(CLOSE));
  }

  /** Each of three columns that have nothing to do with one another buckles as if it were alone. */
  @Test
  void membersTakeTheirOwnModeWhateverItsNumber() {
    PlaneFrame frame = new PlaneFrame();
    double[] loads = {10000, 10000, 6000};
    for (int i = 0; i < 3; i++) {
      frame
          .node("base " + i, 1000 * i, 0, "xz")
          .node("top " + i, 1000 * i, H, "x")
          .bar("column " + i, I, loads[i], "base " + i, "top " + i);
    }
    for (int i = 0; i < 3; i++) {
      assertThat(frame.factor("column " + i)).isCloseTo(1, within(CLOSE));
    }
  }

  /**
   * Euler's force is 76.8 kN, 51 times the 1.5 kN: taken as 30 times, so √(51.2/30) of the length.
   */
  @Test
  void hardlyCompressedMembersAreTakenAsIfTheyBuckledAtThirtyTimes() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("base", 0, 0, "xz")
            .node("top", 0, H, "x")
            .bar("column", I, 1500, "base", "top");
    double euler = Math.PI * Math.PI * PlaneFrame.E * I / (H * H);
    assertThat(frame.factor("column")).isCloseTo(Math.sqrt(euler / 30 / 1500), within(1e-9));
  }

  @Test
  void nothingIsSaidOfMembersThatAreNotCompressed() {
    PlaneFrame plane = portal("xzr", "", 1e6, 3000);
    Frame frame = plane.frame();
    CriticalLengths lengths =
        new CriticalLengths(
            new FrameStiffness(frame),
            List.of(new CriticalLengths.Axial("case", plane.axial(frame))));
    Member beam = frame.members().get(2);
    Member column = frame.members().get(0);
    for (BucklingMode mode : BucklingMode.values()) {
      assertThat(lengths.of(beam, mode)).isEmpty();
    }
    assertThat(lengths.of(column, BucklingMode.TORSIONAL)).isEmpty();
    assertThat(lengths.of(column, BucklingMode.FLEXURAL_Y).map(BucklingLength::reason))
        .hasValueSatisfying(
            reason -> assertThat(reason).contains("of its length; the frame buckles at"));
  }
}
