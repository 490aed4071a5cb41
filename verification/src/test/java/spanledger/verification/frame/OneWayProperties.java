package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.analysis.Side;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.state.Condition;
import spanledger.state.HoldReport;
import spanledger.state.Imperfections;
import spanledger.state.LoadState;
import spanledger.state.StateAnalysis;
import spanledger.state.StateOptions;
import spanledger.state.StateOutcome;
import spanledger.state.StateResult;

/**
 * A beam on random feet that may lift, with gaps and springs. What is found must fulfil the
 * conditions of contact: no foot pulls, none is pushed through, none bears without contact. As the
 * energy of a held frame is convex these have one solution only, so they prove it.
 */
class OneWayProperties {

  private static final double SPACING = 900;

  /** Feet and loads of a beam. */
  private record Feet(List<Double> gaps, List<Double> stiffnesses, List<Double> loads) {}

  @Provide
  Arbitrary<Feet> feet() {
    return Arbitraries.randomValue(OneWayProperties::make);
  }

  private static Feet make(Random random) {
    int count = 3 + random.nextInt(8);
    List<Double> gaps = new ArrayList<>();
    List<Double> stiffnesses = new ArrayList<>();
    List<Double> loads = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      gaps.add(random.nextInt(3) == 0 ? random.nextDouble() : 0);
      stiffnesses.add(
          random.nextBoolean() ? Double.POSITIVE_INFINITY : 100 + 5_000 * random.nextDouble());
      loads.add(1_500 * random.nextDouble() - 600);
    }
    return new Feet(gaps, stiffnesses, loads);
  }

  private static Frame beam(Feet feet) {
    List<Node> nodes = new ArrayList<>();
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < feet.gaps().size(); i++) {
      Node node = new Node("F" + i, new Vector(i * SPACING, 0, 0));
      nodes.add(node);
      Restraint foot =
          new Restraint.OneWay(
              Restraint.Way.NEGATIVE, feet.gaps().get(i), feet.stiffnesses().get(i));
      Restraint along = i == 0 ? Restraint.FIXED : Restraint.FREE;
      supports.add(
          new Support(
              node,
              List.of(
                  along, Restraint.FIXED, foot, Restraint.FIXED, Restraint.FREE, Restraint.FIXED)));
    }
    Member member =
        new Member(
            "beam",
            MemberRole.OTHER,
            nodes,
            GivenBar.section("bar", 1_000, 500, 500, 1e6, 1e6, 1e6),
            GivenBar.alloy("bar", 70_000, 27_000),
            0,
            MemberEnd.RIGID,
            MemberEnd.RIGID);
    return new Frame(nodes, List.of(member), supports);
  }

  @Property(tries = 300)
  void feetBearOnlyWhereTheyTouchAndNeverPull(@ForAll("feet") Feet feet) {
    Frame frame = beam(feet);
    List<NodalLoad> loads = new ArrayList<>();
    for (int i = 0; i < feet.loads().size(); i++) {
      loads.add(
          new NodalLoad(
              frame.nodes().get(i), new Vector(0, 0, -feet.loads().get(i)), Vector.ZERO, "load"));
    }
    StateOutcome outcome =
        new StateAnalysis(frame, StateOptions.FIRST_ORDER)
            .solve(LoadState.of(new LoadCase("loads", loads, List.of())));

    assertThat(outcome).isNotInstanceOf(StateOutcome.NotConverged.class);
    double whole = feet.loads().stream().mapToDouble(x -> x).sum();
    if (whole < 0) {
      assertThat(outcome).as("lifted as a whole").isInstanceOf(StateOutcome.Unstable.class);
    }
    if (outcome instanceof StateOutcome.Solved solved) {
      StateResult result = solved.result();
      double borne = 0;
      for (int i = 0; i < feet.gaps().size(); i++) {
        double up = result.reaction(frame.nodes().get(i)).force().z();
        double down = -result.movement(frame.nodes().get(i), Freedom.SHIFT_Z);
        double overlap = down - feet.gaps().get(i);
        double stiffness = feet.stiffnesses().get(i);
        borne += up;
        assertThat(up).as("foot %s does not pull", i).isGreaterThan(-1e-5);
        if (Double.isInfinite(stiffness)) {
          assertThat(overlap).as("foot %s is not pushed through", i).isLessThan(1e-7);
        } else {
          assertThat(up).isCloseTo(Math.max(0, stiffness * overlap), within(1e-4));
        }
        if (up > 1e-3) {
          assertThat(overlap).as("foot %s touches", i).isGreaterThan(-1e-7);
        }
      }
      assertThat(borne).isCloseTo(whole, within(1e-6 * (1 + Math.abs(whole))));
    }
  }

  @Test
  void everyStateGetsLevelForcesEachWayOnceOnly() {
    Node foot = new Node("foot", Vector.ZERO);
    Node head = new Node("head", new Vector(0, 0, 1_000));
    Member post =
        new Member(
            "post",
            MemberRole.OTHER,
            List.of(foot, head),
            GivenBar.section("bar", 1_000, 500, 500, 1e6, 1e6, 1e6),
            GivenBar.alloy("bar", 70_000, 27_000),
            0,
            MemberEnd.RIGID,
            MemberEnd.RIGID);
    Frame frame =
        new Frame(
            List.of(foot, head),
            List.of(post),
            List.of(new Support(foot, Collections.nCopies(6, Restraint.FIXED))));
    LoadState state =
        LoadState.of(
            new LoadCase(
                "weight",
                List.of(new NodalLoad(head, new Vector(0, 0, -1_000), Vector.ZERO, "weight")),
                List.of()));

    List<LoadState> ways = Imperfections.everyWay(state, 1.0 / 200);

    assertThat(ways).hasSize(4);
    StateAnalysis analysis = new StateAnalysis(frame, StateOptions.FIRST_ORDER);
    double[][] expected = {{-5, 0}, {5, 0}, {0, -5}, {0, 5}};
    for (int i = 0; i < 4; i++) {
      StateResult result = ((StateOutcome.Solved) analysis.solve(ways.get(i))).result();
      assertThat(result.reaction(foot).force().x()).isCloseTo(expected[i][0], within(1e-9));
      assertThat(result.reaction(foot).force().y()).isCloseTo(expected[i][1], within(1e-9));
      assertThat(Imperfections.everyWay(ways.get(i), 1.0 / 200)).containsExactly(ways.get(i));
    }
    // A bow of L/300 under 1000 N: moment 8 N e/L² L²/8 = N e at the middle of a bar held at both
    // ends; here the foot of a cantilever takes none, as the forces at the ends balance it.
    StateResult rest = ((StateOutcome.Solved) analysis.solve(state)).result();
    LoadCase bow = Imperfections.bows(rest, frame, m -> 1.0 / 300, true, 1);
    StateResult bent = ((StateOutcome.Solved) analysis.solve(state.with(bow, 1))).result();
    assertThat(bent.reaction(foot).force().x()).isCloseTo(0, within(1e-9));
    assertThat(bent.reaction(foot).moment().y()).isCloseTo(0, within(1e-6));
    assertThat(Math.abs(bent.response(frame.segments().get(0)).at(500, Side.BEFORE).momentY()))
        .as("N e at the middle")
        .isCloseTo(1_000 * 1_000 / 300.0, within(1e-6));
  }

  @Test
  void whatLiftsIsNamed() {
    Feet feet =
        new Feet(
            List.of(0.0, 0.0, 0.0),
            List.of(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY),
            List.of());
    Frame frame = beam(feet);
    LoadCase loads =
        new LoadCase(
            "lift",
            List.of(
                new NodalLoad(frame.nodes().get(0), new Vector(0, 0, 50), Vector.ZERO, "up"),
                new NodalLoad(frame.nodes().get(1), new Vector(0, 0, -400), Vector.ZERO, "down")),
            List.of());
    StateResult result =
        ((StateOutcome.Solved)
                new StateAnalysis(frame, StateOptions.FIRST_ORDER).solve(LoadState.of(loads)))
            .result();

    List<HoldReport> open =
        result.holds().stream().filter(h -> h.condition() == Condition.OPEN).toList();
    assertThat(open).extracting(HoldReport::words).contains("the foot at node F0 has lifted");
  }
}
