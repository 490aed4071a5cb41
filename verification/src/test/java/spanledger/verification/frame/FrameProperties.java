package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/**
 * What must hold for any frame, whatever its figures.
 *
 * <p>Tolerances are shares of the greatest value compared: random frames amplify rounding by up to
 * about a million, the ratio of the stiffest to the softest part.
 */
class FrameProperties {

  private static final double SHARE = 1e-8;

  @Provide
  Arbitrary<RandomFrame> frames() {
    return Arbitraries.randomValue(RandomFrame::make);
  }

  @Provide
  Arbitrary<Vector> axes() {
    return Arbitraries.randomValue(RandomFrame::direction);
  }

  @Property(tries = 100)
  void forcesBalanceAtNodesAndOnTheWhole(@ForAll("frames") RandomFrame random) {
    Frame frame = random.frame();

    CaseResult result = solve(frame, random.both("all", frame));

    assertThat(result.equilibrium().nodeResidual()).isLessThan(1e-9);
    assertThat(result.equilibrium().wholeResidual()).isLessThan(1e-9);
  }

  @Property(tries = 100)
  void theWorkOfOneLoadOnTheMovementsOfAnotherIsMutual(
      @ForAll("frames") RandomFrame random, @ForAll Random other) {
    Frame frame = random.frame();
    LoadCase first = random.nodal("first", frame);
    List<NodalLoad> loads = new ArrayList<>();
    for (Node node : frame.nodes()) {
      loads.add(
          new NodalLoad(
              node,
              RandomFrame.direction(other).times(800),
              RandomFrame.direction(other).times(2e5),
              "second"));
    }
    LoadCase second = new LoadCase("second", loads, List.of());

    FrameSolution solution = new FrameAnalysis(frame).solve(List.of(first, second));

    double firstOnSecond = work(first, solution.result(second));
    double secondOnFirst = work(second, solution.result(first));
    double scale = work(first, solution.result(first)) + work(second, solution.result(second));
    assertThat(Math.abs(firstOnSecond - secondOnFirst)).isLessThan(SHARE * scale);
  }

  private static double work(LoadCase loads, CaseResult result) {
    double work = 0;
    for (NodalLoad load : loads.nodalLoads()) {
      work += load.force().dot(result.shift(load.node()));
      work += load.moment().dot(result.turn(load.node()));
    }
    return work;
  }

  @Property(tries = 100)
  void loadsSuperpose(@ForAll("frames") RandomFrame random) {
    Frame frame = random.frame();
    LoadCase nodal = random.nodal("nodal", frame);
    LoadCase along = random.along("along", frame);

    FrameSolution solution =
        new FrameAnalysis(frame).solve(List.of(nodal, along, random.both("both", frame)));

    double[] sum = movements(frame, solution.results().get(0));
    double[] second = movements(frame, solution.results().get(1));
    for (int i = 0; i < sum.length; i++) {
      sum[i] += second[i];
    }
    alike(sum, movements(frame, solution.results().get(2)));
  }

  @Property(tries = 100)
  void aTurnOfTheWholeFrameInSpaceTurnsItsMovementsAndKeepsItsEndForces(
      @ForAll("frames") RandomFrame random, @ForAll("axes") Vector axis, @ForAll Random angle) {
    double by = angle.nextDouble() * 6;
    UnaryOperator<Vector> turn = v -> turned(v, axis, by);
    Frame before = random.frame();
    RandomFrame moved = random.turned(turn);
    moved = withRollsOf(moved, before, turn);
    Frame after = moved.frame();

    CaseResult first = solve(before, random.both("all", before));
    CaseResult second = solve(after, moved.both("all", after));

    double[] expected = new double[3 * before.nodes().size()];
    double[] found = new double[expected.length];
    for (int i = 0; i < before.nodes().size(); i++) {
      put(expected, 3 * i, turn.apply(first.shift(before.nodes().get(i))));
      put(found, 3 * i, second.shift(after.nodes().get(i)));
    }
    alike(expected, found);
    for (int s = 0; s < before.segments().size(); s++) {
      alikeForces(
          first.endForces(before.segments().get(s)), second.endForces(after.segments().get(s)));
    }
  }

  /** Rolls are measured from the upright plane, which does not turn with the frame. */
  private static RandomFrame withRollsOf(
      RandomFrame moved, Frame before, UnaryOperator<Vector> turn) {
    Frame unrolled = moved.withBars(b -> b.withRoll(0)).frame();
    List<RandomFrame.Bar> bars = new ArrayList<>();
    for (int s = 0; s < before.segments().size(); s++) {
      Vector y = turn.apply(new SegmentModel(before.segments().get(s)).axisY());
      SegmentModel plain = new SegmentModel(unrolled.segments().get(s));
      double roll = Math.atan2(y.dot(plain.axisZ()), y.dot(plain.axisY()));
      bars.add(moved.bars().get(s).withRoll(roll));
    }
    return new RandomFrame(moved.places(), bars, moved.clamped(), moved.forces(), moved.moments());
  }

  @Property(tries = 100)
  void aQuarterRollWithTheSectionTurnedBackChangesNothing(@ForAll("frames") RandomFrame random) {
    RandomFrame rolled =
        random.withBars(
            b ->
                new RandomFrame.Bar(
                    b.from(),
                    b.to(),
                    b.area(),
                    b.shearZ(),
                    b.shearY(),
                    b.inertiaZ(),
                    b.inertiaY(),
                    b.torsion(),
                    b.roll() + Math.PI / 2,
                    swapped(b.start()),
                    swapped(b.end()),
                    b.load()));

    alikeMovements(random, rolled);
  }

  private static MemberEnd swapped(MemberEnd end) {
    return new MemberEnd(end.torsion(), end.aboutZ(), end.aboutY(), end.offset());
  }

  @Property(tries = 100)
  void aMemberDrawnTheOtherWayRoundActsTheSame(@ForAll("frames") RandomFrame random) {
    RandomFrame reversed =
        random.withBars(
            b ->
                new RandomFrame.Bar(
                    b.to(),
                    b.from(),
                    b.area(),
                    b.shearY(),
                    b.shearZ(),
                    b.inertiaY(),
                    b.inertiaZ(),
                    b.torsion(),
                    -b.roll(),
                    b.end(),
                    b.start(),
                    b.load().reversed()));

    alikeMovements(random, reversed);
  }

  @Property(tries = 50)
  void aNodeInTheMiddleOfAMemberChangesNothing(@ForAll("frames") RandomFrame random) {
    // Arms would put the middle of the member off the line between its nodes.
    RandomFrame plain = random.withBars(b -> b.withEnds(unarmed(b.start()), unarmed(b.end())));
    Frame frame = plain.frame();
    Frame split = split(frame);

    CaseResult whole = solve(frame, plain.nodal("nodal", frame));
    CaseResult parts = solve(split, plain.nodal("nodal", frame));

    alike(movements(frame, whole), movements(frame, parts));
  }

  private static MemberEnd unarmed(MemberEnd end) {
    return new MemberEnd(end.torsion(), end.aboutY(), end.aboutZ(), Vector.ZERO);
  }

  private static Frame split(Frame frame) {
    List<Node> nodes = new ArrayList<>(frame.nodes());
    List<Member> members = new ArrayList<>();
    for (Member m : frame.members()) {
      Node a = m.nodes().get(0);
      Node b = m.nodes().get(1);
      Node middle =
          new Node("middle of " + m.name(), a.place().times(0.3).plus(b.place().times(0.7)));
      nodes.add(middle);
      members.add(
          new Member(
              m.name(),
              m.role(),
              List.of(a, middle, b),
              m.section(),
              m.alloy(),
              m.roll(),
              m.start(),
              m.end()));
    }
    return new Frame(nodes, members, frame.supports());
  }

  private static void alikeMovements(RandomFrame one, RandomFrame other) {
    Frame first = one.frame();
    Frame second = other.frame();
    alike(
        movements(first, solve(first, one.both("all", first))),
        movements(second, solve(second, other.both("all", second))));
  }

  static CaseResult solve(Frame frame, LoadCase loads) {
    return new FrameAnalysis(frame).solve(List.of(loads)).results().get(0);
  }

  /** Shifts, and turns with an arm of a metre. */
  private static double[] movements(Frame frame, CaseResult result) {
    double[] all = new double[6 * frame.nodes().size()];
    for (int i = 0; i < frame.nodes().size(); i++) {
      put(all, 6 * i, result.shift(frame.nodes().get(i)));
      put(all, 6 * i + 3, result.turn(frame.nodes().get(i)).times(1_000));
    }
    return all;
  }

  private static void put(double[] into, int at, Vector vector) {
    into[at] = vector.x();
    into[at + 1] = vector.y();
    into[at + 2] = vector.z();
  }

  private static void alikeForces(double[] expected, double[] found) {
    double[] a = expected.clone();
    double[] b = found.clone();
    for (int i = 0; i < a.length; i++) {
      if (i % 6 >= 3) {
        a[i] /= 1_000;
        b[i] /= 1_000;
      }
    }
    alike(a, b);
  }

  private static void alike(double[] expected, double[] found) {
    double scale = 0;
    double worst = 0;
    for (int i = 0; i < expected.length; i++) {
      scale = Math.max(scale, Math.abs(expected[i]));
      worst = Math.max(worst, Math.abs(expected[i] - found[i]));
    }
    assertThat(worst).isLessThanOrEqualTo(SHARE * scale);
  }

  private static Vector turned(Vector v, Vector axis, double angle) {
    return v.times(Math.cos(angle))
        .plus(axis.cross(v).times(Math.sin(angle)))
        .plus(axis.times(axis.dot(v) * (1 - Math.cos(angle))));
  }
}
