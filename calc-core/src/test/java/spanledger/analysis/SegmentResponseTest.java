package spanledger.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.action.LoadCase;
import spanledger.action.SegmentLoad;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** Forces along a segment: both sides of a load, turning points, sums, moving loads. */
class SegmentResponseTest {

  private static final double LENGTH = 3_000;

  private final Node left = Bars.node("A", 0, 0, 0);
  private final Node right = Bars.node("B", LENGTH, 0, 0);
  private final Member beam = Bars.member("beam", MemberEnd.RIGID, MemberEnd.PINNED, left, right);
  private final Frame frame =
      new Frame(List.of(left, right), List.of(beam), List.of(Bars.clamp(left), Bars.clamp(right)));
  private final Segment segment = frame.segments().get(0);

  private SegmentResponse response(SegmentLoad... loads) {
    LoadCase loadCase = Bars.along(loads);
    return new FrameAnalysis(frame).solve(List.of(loadCase)).response(segment, loadCase);
  }

  @Test
  void shearJumpsAtAPointLoadAndMomentDoesNot() {
    SegmentResponse response = response(Bars.point(segment, Vector.DOWN, 800, 1_000));

    InternalForces before = response.at(1_000, Side.BEFORE);
    InternalForces after = response.at(1_000, Side.AFTER);

    assertThat(after.shearZ() - before.shearZ()).isCloseTo(800, within(1e-9));
    assertThat(after.momentY()).isCloseTo(before.momentY(), within(1e-6));
    assertThat(response.breaks()).containsExactly(0, 1_000, LENGTH);
  }

  @Test
  void theFarEndOfThePinnedSideBearsNoMoment() {
    SegmentResponse response = response(Bars.spread(segment, Vector.DOWN, 2, 5, 400, 2_600));

    assertThat(response.at(LENGTH, Side.BEFORE).momentY()).isCloseTo(0, within(1e-6));
    assertThat(response.deflectionZ(0)).isZero();
    assertThat(response.deflectionZ(LENGTH)).isZero();
  }

  @Test
  void theGreatestMomentStandsWhereTheShearVanishes() {
    SegmentResponse response = response(Bars.spread(segment, Vector.DOWN, 1, 4, 0, LENGTH));

    Extreme sagging = response.least(SegmentEffect.MOMENT_Y);

    assertThat(response.at(sagging.x(), sagging.side()).shearZ()).isCloseTo(0, within(1e-8));
    assertThat(sagging.value()).isNegative();
    Extreme sag = response.least(SegmentEffect.DEFLECTION_Z);
    for (double x = 0; x <= LENGTH; x += 10) {
      assertThat(response.at(x, Side.BEFORE).momentY())
          .isGreaterThanOrEqualTo(sagging.value() - 1e-6);
      assertThat(response.deflectionZ(x)).isGreaterThanOrEqualTo(sag.value() - 1e-12);
    }
  }

  @Test
  void axialForceFollowsALoadAlongTheMember() {
    SegmentResponse response = response(Bars.spread(segment, Bars.ALONG_X, 0.5, 0.5, 0, LENGTH));

    assertThat(response.greatest(SegmentEffect.AXIAL).value())
        .isCloseTo(0.5 * LENGTH / 2, within(1e-9));
    assertThat(response.least(SegmentEffect.AXIAL).value())
        .isCloseTo(-0.5 * LENGTH / 2, within(1e-9));
  }

  @Test
  void aSumIsTheSumOfItsParts() {
    SegmentResponse first =
        response(
            Bars.spread(segment, Vector.DOWN, 2, 1, 300, 2_000),
            Bars.point(segment, Bars.ALONG_Y, 100, 700));
    SegmentResponse second =
        response(
            Bars.spread(segment, Bars.ALONG_Y, 0, 3, 1_000, 2_500),
            Bars.point(segment, new Vector(0.6, 0, -0.8), 250, 1_300));

    SegmentResponse sum = SegmentResponse.sum(List.of(first, second), new double[] {1.35, -0.8});

    for (double x = 0; x <= LENGTH; x += 50) {
      for (Side side : Side.values()) {
        double[] fast = new double[6];
        sum.forces(x, side, fast);
        InternalForces exact = sum.at(x, side);
        InternalForces a = first.at(x, side);
        InternalForces b = second.at(x, side);
        assertThat(exact.momentY()).isCloseTo(1.35 * a.momentY() - 0.8 * b.momentY(), within(1e-6));
        assertThat(exact.axial()).isCloseTo(1.35 * a.axial() - 0.8 * b.axial(), within(1e-9));
        assertThat(fast[4]).isCloseTo(exact.momentY(), within(1e-6));
        assertThat(fast[5]).isCloseTo(exact.momentZ(), within(1e-6));
        if (Arrays.binarySearch(sum.breaks(), x) < 0 || side == Side.BEFORE) {
          assertThat(fast[0]).isCloseTo(exact.axial(), within(1e-8));
          assertThat(fast[1]).isCloseTo(exact.shearY(), within(1e-8));
          assertThat(fast[2]).isCloseTo(exact.shearZ(), within(1e-8));
        }
      }
      assertThat(sum.deflectionZ(x))
          .isCloseTo(1.35 * first.deflectionZ(x) - 0.8 * second.deflectionZ(x), within(1e-12));
    }
  }

  @Test
  void aMovingLoadActsAsOneSolvedByItself() {
    Node a = Bars.node("A", 0, 0, 0);
    Node b = Bars.node("B", 0, 2_000, 1_000);
    Node c = Bars.node("C", 1_500, 2_000, 1_500);
    Frame bent =
        new Frame(
            List.of(a, b, c),
            List.of(Bars.member("AB", a, b), Bars.member("BC", b, c)),
            List.of(Bars.clamp(a), Bars.clamp(c)));
    FrameAnalysis analysis = new FrameAnalysis(bent);
    Segment loaded = bent.segments().get(1);
    SegmentLoad load = Bars.point(loaded, new Vector(0.36, 0.48, -0.8), 1_000, 600);
    LoadCase loadCase = Bars.along(load);
    FrameSolution solution = analysis.solve(List.of(loadCase));

    SegmentInfluence influence =
        new SegmentInfluence(
            analysis, loaded, new NodeInfluence(analysis, b), new NodeInfluence(analysis, c));

    for (Segment target : bent.segments()) {
      SegmentResponse moved = influence.place(load).response(target);
      SegmentResponse direct = solution.response(target, loadCase);
      for (double x = 0; x < target.length(); x += 100) {
        InternalForces m = moved.at(x, Side.AFTER);
        InternalForces d = direct.at(x, Side.AFTER);
        assertThat(m.axial()).isCloseTo(d.axial(), within(1e-9));
        assertThat(m.shearZ()).isCloseTo(d.shearZ(), within(1e-9));
        assertThat(m.torque()).isCloseTo(d.torque(), within(1e-6));
        assertThat(m.momentY()).isCloseTo(d.momentY(), within(1e-6));
        assertThat(m.momentZ()).isCloseTo(d.momentZ(), within(1e-6));
        assertThat(moved.deflectionY(x)).isCloseTo(direct.deflectionY(x), within(1e-12));
      }
    }
  }
}
