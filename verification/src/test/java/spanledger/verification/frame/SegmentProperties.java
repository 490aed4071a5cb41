package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import spanledger.action.LoadCase;
import spanledger.action.SegmentLoad;
import spanledger.analysis.Extreme;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.InternalForces;
import spanledger.analysis.NodeInfluence;
import spanledger.analysis.SegmentEffect;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.frame.Frame;
import spanledger.frame.Segment;

/** What must hold along any segment of any frame. */
class SegmentProperties {

  private static final int CUTS = 400;

  @Provide
  Arbitrary<RandomFrame> frames() {
    return Arbitraries.randomValue(RandomFrame::make);
  }

  private static SegmentResponse lastSegment(RandomFrame random) {
    Frame frame = random.frame();
    LoadCase all = random.both("all", frame);
    FrameSolution solution = new FrameAnalysis(frame).solve(List.of(all));
    return solution.response(frame.segments().get(frame.segments().size() - 1), all);
  }

  @Property(tries = 100)
  void nothingBetweenTheStationsGoesBeyondTheExtremes(@ForAll("frames") RandomFrame random) {
    SegmentResponse response = lastSegment(random);
    for (SegmentEffect effect : SegmentEffect.values()) {
      Extreme greatest = response.greatest(effect);
      Extreme least = response.least(effect);
      double slack = 1e-9 * Math.max(Math.abs(greatest.value()), Math.abs(least.value()));
      for (int i = 0; i <= CUTS; i++) {
        double value = value(response, effect, i * response.model().length() / CUTS);
        assertThat(value).isBetween(least.value() - slack, greatest.value() + slack);
      }
    }
  }

  private static double value(SegmentResponse response, SegmentEffect effect, double x) {
    InternalForces forces = response.at(x, Side.BEFORE);
    return switch (effect) {
      case AXIAL -> forces.axial();
      case SHEAR_Y -> forces.shearY();
      case SHEAR_Z -> forces.shearZ();
      case TORQUE -> forces.torque();
      case MOMENT_Y -> forces.momentY();
      case MOMENT_Z -> forces.momentZ();
      case DEFLECTION_Y -> response.deflectionY(x);
      case DEFLECTION_Z -> response.deflectionZ(x);
    };
  }

  @Property(tries = 100)
  void nothingBetweenTheStationsStressesMore(@ForAll("frames") RandomFrame random) {
    SegmentResponse response = lastSegment(random);
    double area = 1_000;
    double modulusY = 30_000;
    double modulusZ = 20_000;
    double[] forces = new double[6];
    for (double s2 = -1; s2 <= 1; s2 += 2) {
      for (double s3 = -1; s3 <= 1; s3 += 2) {
        double most = 0;
        for (double x : response.candidateStations(area, modulusY, modulusZ)) {
          for (Side side : Side.values()) {
            response.forces(x, side, forces);
            most =
                Math.max(
                    most,
                    Math.abs(
                        forces[0] / area + s2 * forces[4] / modulusY + s3 * forces[5] / modulusZ));
          }
        }
        for (int i = 0; i <= CUTS; i++) {
          response.forces(i * response.model().length() / CUTS, Side.BEFORE, forces);
          assertThat(
                  Math.abs(
                      forces[0] / area + s2 * forces[4] / modulusY + s3 * forces[5] / modulusZ))
              .isLessThanOrEqualTo(most * (1 + 1e-9));
        }
      }
    }
  }

  @Property(tries = 100)
  void theChangeOfMomentIsTheShear(@ForAll("frames") RandomFrame random) {
    SegmentResponse response = lastSegment(random);
    double step = response.model().length() / CUTS;
    double[] breaks = response.breaks();
    for (int piece = 0; piece + 1 < breaks.length; piece++) {
      double x = 0.5 * (breaks[piece] + breaks[piece + 1]);
      double reach = Math.min(step, 0.4 * (breaks[piece + 1] - breaks[piece]));
      InternalForces before = response.at(x - reach, Side.BEFORE);
      InternalForces after = response.at(x + reach, Side.BEFORE);
      InternalForces at = response.at(x, Side.BEFORE);
      // Off by the slope of the load only, q' h²/6; loads change by at most 4 N/mm in 30 mm.
      double slack = 4.0 / 30 * reach * reach / 6 + 1e-6;
      assertThat((after.momentY() - before.momentY()) / (2 * reach))
          .isCloseTo(at.shearZ(), within(slack));
      assertThat((after.momentZ() - before.momentZ()) / (2 * reach))
          .isCloseTo(-at.shearY(), within(slack));
    }
  }

  @Property(tries = 100)
  void aMovingLoadActsAsOneSolvedByItself(@ForAll("frames") RandomFrame random) {
    Frame frame = random.frame();
    FrameAnalysis analysis = new FrameAnalysis(frame);
    int bar = frame.segments().size() / 2;
    SegmentLoad load = random.point("moving", frame, bar);
    LoadCase alone = new LoadCase("moving", List.of(), List.of(load));
    FrameSolution solution = analysis.solve(List.of(alone));
    Segment loaded = frame.segments().get(bar);

    SegmentInfluence.Placed placed =
        new SegmentInfluence(
                analysis,
                loaded,
                new NodeInfluence(analysis, loaded.first()),
                new NodeInfluence(analysis, loaded.second()))
            .place(load);

    for (Segment segment : frame.segments()) {
      double[] expected = solution.result(alone).endForces(segment);
      double[] found = placed.response(segment).startForces();
      for (int i = 0; i < found.length; i++) {
        double unit = i < 3 ? 1 : 1_000;
        assertThat(found[i] / unit).isCloseTo(expected[i] / unit, within(1e-6));
      }
    }
  }
}
