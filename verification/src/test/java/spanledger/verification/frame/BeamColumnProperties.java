package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.BeamColumnResponse;
import spanledger.analysis.InternalForces;
import spanledger.analysis.Side;
import spanledger.frame.DividedFrame;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.state.LoadState;
import spanledger.state.StateAnalysis;
import spanledger.state.StateOptions;
import spanledger.state.StateOutcome;
import spanledger.state.StateResult;

/**
 * Random bars under axial force against direct integration of their differential equation: from the
 * values that the analysis gives at the start, w' = (φ + V/GA)/(1 − P/GA), φ' = −M/EI, V' = −q, M'
 * = V + P w' must lead to those at the far end and on the way. The boundary value problem has one
 * solution below the critical load.
 */
class BeamColumnProperties {

  private static final double LENGTH = 2_000;
  private static final double MODULUS = 70_000;
  private static final double SHEAR_MODULUS = 27_000;

  /** A bar, its holds and its loads. */
  private record Bar(
      double inertia,
      double shearArea,
      double axial,
      double springA,
      double springB,
      double q1,
      double q2,
      double from,
      double to,
      double force,
      double at) {

    double rigidity() {
      return MODULUS * inertia;
    }
  }

  @Provide
  Arbitrary<Bar> bars() {
    return Arbitraries.randomValue(BeamColumnProperties::make);
  }

  private static Bar make(Random random) {
    double inertia = 1e5 * Math.pow(10, random.nextDouble());
    double euler = Math.PI * Math.PI * MODULUS * inertia / (LENGTH * LENGTH);
    double from = 0.6 * random.nextDouble() * LENGTH;
    return new Bar(
        inertia,
        50 + 400 * random.nextDouble(),
        // From three Euler loads of tension to 0.9 of compression.
        euler * (3 - 3.9 * random.nextDouble()),
        1e7 * random.nextDouble(),
        1e7 * random.nextDouble(),
        2 * random.nextDouble() - 1,
        2 * random.nextDouble() - 1,
        from,
        from + 200 + (LENGTH - from - 200) * random.nextDouble(),
        400 * random.nextDouble() - 200,
        LENGTH * (0.1 + 0.8 * random.nextDouble()));
  }

  @Property(tries = 200)
  void fulfilTheDifferentialEquationOfTheBeamColumn(@ForAll("bars") Bar bar) {
    Node a = new Node("A", Vector.ZERO);
    Node b = new Node("B", new Vector(LENGTH, 0, 0));
    Member member =
        new Member(
            "AB",
            MemberRole.OTHER,
            List.of(a, b),
            GivenBar.section("bar", 1_000, 1e6, bar.shearArea(), bar.inertia(), 1e8, 1e6),
            GivenBar.alloy("bar", MODULUS, SHEAR_MODULUS),
            0,
            MemberEnd.RIGID,
            MemberEnd.RIGID);
    Frame frame =
        new Frame(
            List.of(a, b),
            List.of(member),
            List.of(support(a, true, bar.springA()), support(b, false, bar.springB())));
    Segment segment = frame.segments().get(0);
    LoadCase loads =
        new LoadCase(
            "loads",
            List.of(new NodalLoad(b, new Vector(bar.axial(), 0, 0), Vector.ZERO, "pull")),
            List.of(
                new SegmentLoad.Distributed(
                    segment,
                    LoadAxes.GLOBAL,
                    new Vector(0, 0, 1),
                    new LoadOrigin.Given("q"),
                    bar.q1(),
                    bar.q2(),
                    bar.from(),
                    bar.to()),
                new SegmentLoad.Point(
                    segment,
                    LoadAxes.GLOBAL,
                    new Vector(0, 0, 1),
                    new LoadOrigin.Given("Q"),
                    bar.force(),
                    bar.at())));

    StateResult result =
        ((StateOutcome.Solved)
                new StateAnalysis(frame, StateOptions.SECOND_ORDER).solve(LoadState.of(loads)))
            .result();
    BeamColumnResponse response = result.response(segment);
    double[] end = result.endForces(segment);

    double[] y = {0, -result.turn(a).y(), -end[2], -end[4]};
    double scale = 1 + LENGTH * (Math.abs(bar.force()) + LENGTH * 0.5) / 4;
    double place = 0;
    for (double next :
        List.of(0.31 * LENGTH, bar.at(), 0.77 * LENGTH, LENGTH).stream().sorted().toList()) {
      integrate(bar, place, y, next);
      place = next;
      InternalForces found = response.at(next, Side.BEFORE);
      assertThat(found.momentY()).as("moment at %s", next).isCloseTo(y[3], within(1e-7 * scale));
      double slope = slope(bar, y);
      assertThat(found.shearZ())
          .as("shear at %s", next)
          .isCloseTo(y[2] - bar.axial() * slope, within(1e-6 * scale / LENGTH));
      assertThat(response.deflectionZ(next))
          .as("deflection at %s", next)
          .isCloseTo(y[0], within(2e-6 * (0.1 + Math.abs(y[0]))));
      if (next == bar.at()) {
        y[2] -= bar.force();
      }
    }
    assertThat(y[0]).as("far end stays").isCloseTo(0, within(1e-6));
    assertThat(y[1]).as("turn of the far end").isCloseTo(-result.turn(b).y(), within(1e-8));
    assertThat(y[3]).as("moment at the far end").isCloseTo(end[10], within(1e-7 * scale));
  }

  private static double slope(Bar bar, double[] y) {
    double shear = SHEAR_MODULUS * bar.shearArea();
    return (y[1] + y[2] / shear) / (1 + bar.axial() / shear);
  }

  private static void integrate(Bar bar, double from, double[] y, double to) {
    // Where the spread load begins and ends the equation has a kink.
    List<Double> stops = new ArrayList<>(List.of(to));
    for (double kink : List.of(bar.from(), bar.to())) {
      if (kink > from && kink < to) {
        stops.add(kink);
      }
    }
    double place = from;
    for (double stop : stops.stream().sorted().toList()) {
      if (stop > place) {
        double middle = 0.5 * (place + stop);
        boolean loaded = middle > bar.from() && middle < bar.to();
        new DormandPrince853Integrator(1e-6, LENGTH, 1e-11, 1e-11)
            .integrate(equations(bar, loaded), place, y, stop, y);
        place = stop;
      }
    }
  }

  private static FirstOrderDifferentialEquations equations(Bar bar, boolean loaded) {
    return new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 4;
      }

      @Override
      public void computeDerivatives(double x, double[] y, double[] into) {
        double q =
            loaded
                ? bar.q1() + (bar.q2() - bar.q1()) * (x - bar.from()) / (bar.to() - bar.from())
                : 0;
        into[0] = slope(bar, y);
        into[1] = -y[3] / bar.rigidity();
        into[2] = -q;
        into[3] = y[2] - bar.axial() * into[0];
      }
    };
  }

  private static Support support(Node node, boolean along, double spring) {
    Restraint turn = spring > 1e6 ? new Restraint.Spring(spring) : Restraint.FREE;
    return new Support(
        node,
        List.of(
            along ? Restraint.FIXED : Restraint.FREE,
            Restraint.FIXED,
            Restraint.FIXED,
            Restraint.FIXED,
            turn,
            Restraint.FIXED));
  }

  @Provide
  Arbitrary<RandomFrame> frames() {
    return Arbitraries.randomValue(RandomFrame::make);
  }

  @Property(tries = 60)
  void cuttingMembersIntoPiecesChangesNothing(@ForAll("frames") RandomFrame random) {
    Frame whole = random.frame();
    Frame cut = DividedFrame.of(whole, 3).frame();
    // Small loads: random frames are soft, and far movements redistribute forces.
    LoadState state =
        new LoadState("nodal", List.of(new LoadState.Part(random.nodal("n", whole), 0.02)));
    StateOutcome first = new StateAnalysis(whole, StateOptions.SECOND_ORDER).solve(state);
    StateOutcome second = new StateAnalysis(cut, StateOptions.SECOND_ORDER).solve(state);

    assertThat(second.getClass()).isEqualTo(first.getClass());
    if (first instanceof StateOutcome.Solved one && second instanceof StateOutcome.Solved other) {
      double greatest = 0;
      double apart = 0;
      for (Node node : whole.nodes()) {
        for (Freedom freedom : Freedom.values()) {
          double arm = freedom.isShift() ? 1 : 1_000;
          double expected = arm * one.result().movement(node, freedom);
          greatest = Math.max(greatest, Math.abs(expected));
          apart =
              Math.max(apart, Math.abs(expected - arm * other.result().movement(node, freedom)));
        }
      }
      assertThat(apart).isLessThan(1e-6 * greatest);
    }
  }
}
