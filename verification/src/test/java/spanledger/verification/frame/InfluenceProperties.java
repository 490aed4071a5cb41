package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.InternalForces;
import spanledger.analysis.SegmentEffect;
import spanledger.analysis.Side;
import spanledger.envelope.Influence;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/**
 * The reciprocal theorem on random frames: what a load does there follows from what is done here.
 */
class InfluenceProperties {

  /** Of the greatest number compared, as for other properties of random frames. */
  private static final double SHARE = 1e-8;

  private static final double FORCE = 1000;

  @Provide
  Arbitrary<RandomFrame> frames() {
    return Arbitraries.randomValue(RandomFrame::make);
  }

  /** A unit force at A moves B as far along its own direction as a unit force at B moves A. */
  @Property(tries = 100)
  void movementsAreMutual(@ForAll("frames") RandomFrame random, @ForAll Random choice) {
    Frame frame = random.frame();
    Node a = frame.nodes().get(choice.nextInt(frame.nodes().size()));
    Node b = frame.nodes().get(choice.nextInt(frame.nodes().size()));
    Vector alongA = RandomFrame.direction(choice);
    Vector alongB = RandomFrame.direction(choice);
    LoadCase atA = onNode("at A", a, alongA);
    LoadCase atB = onNode("at B", b, alongB);

    FrameSolution solution = new FrameAnalysis(frame).solve(List.of(atA, atB));

    double ofB = solution.result(atA).shift(b).dot(alongB);
    double ofA = solution.result(atB).shift(a).dot(alongA);
    double scale =
        solution.result(atA).shift(a).dot(alongA) + solution.result(atB).shift(b).dot(alongB);
    assertThat(Math.abs(ofA - ofB)).isLessThanOrEqualTo(SHARE * scale);
  }

  private static LoadCase onNode(String name, Node node, Vector along) {
    return new LoadCase(
        name, List.of(new NodalLoad(node, along.times(FORCE), Vector.ZERO, name)), List.of());
  }

  /** Every ordinate of an influence line of a force is that force under the load itself. */
  @Property(tries = 100)
  void ordinatesOfInternalForcesAreThoseOfTheLoadItself(
      @ForAll("frames") RandomFrame random, @ForAll Random choice) {
    Frame frame = random.frame();
    FrameAnalysis analysis = new FrameAnalysis(frame);
    Segment cut = any(frame, choice);
    Station station = new Station(cut, cut.length() * (0.1 + 0.8 * choice.nextDouble()));
    LoadCase load = onSegment(frame, choice);
    InternalForces forces =
        analysis.solve(List.of(load)).response(cut, load).at(station.x(), Side.BEFORE);

    double[] expected = {
      forces.axial(), forces.shearY(), forces.shearZ(), forces.momentY(), forces.momentZ()
    };
    SegmentEffect[] effects = {
      SegmentEffect.AXIAL,
      SegmentEffect.SHEAR_Y,
      SegmentEffect.SHEAR_Z,
      SegmentEffect.MOMENT_Y,
      SegmentEffect.MOMENT_Z
    };
    for (int i = 0; i < effects.length; i++) {
      double found = ordinate(Influence.ofForce(analysis, station, effects[i]), load);
      // N, and N·mm over arms of some metres.
      double scale = i < 3 ? FORCE : FORCE * 3000;
      assertThat(Math.abs(found - expected[i])).as("%s", effects[i]).isLessThan(1e-6 * scale);
    }
  }

  @Property(tries = 100)
  void ordinatesOfMovementsAndReactionsAreThoseOfTheLoadItself(
      @ForAll("frames") RandomFrame random, @ForAll Random choice) {
    Frame frame = random.frame();
    FrameAnalysis analysis = new FrameAnalysis(frame);
    LoadCase load = onSegment(frame, choice);
    Segment looked = any(frame, choice);
    Vector along = RandomFrame.direction(choice);
    Support support = frame.supports().get(choice.nextInt(frame.supports().size()));

    CaseResult result = analysis.solve(List.of(load)).results().get(0);

    // At an end without an arm a point of the segment moves as its node does.
    if (looked.start().offset().norm() == 0) {
      double moved = result.shift(looked.first()).dot(along);
      double found = ordinate(Influence.ofMovement(analysis, new Station(looked, 0), along), load);
      assertThat(Math.abs(found - moved))
          .isLessThanOrEqualTo(SHARE * (result.shift(looked.first()).norm() + 1));
    }
    double reaction = result.reaction(support.node()).force().z();
    double found = ordinate(Influence.ofReaction(analysis, support, Freedom.SHIFT_Z), load);
    assertThat(Math.abs(found - reaction)).isLessThan(1e-6 * FORCE);
  }

  private static double ordinate(Influence influence, LoadCase load) {
    SegmentLoad.Point point = (SegmentLoad.Point) load.segmentLoads().get(0);
    return FORCE * influence.ordinate(point.segment(), point.direction(), point.at());
  }

  private static Segment any(Frame frame, Random choice) {
    return frame.segments().get(choice.nextInt(frame.segments().size()));
  }

  private static LoadCase onSegment(Frame frame, Random choice) {
    Segment loaded = any(frame, choice);
    return new LoadCase(
        "load",
        List.of(),
        List.of(
            new SegmentLoad.Point(
                loaded,
                LoadAxes.GLOBAL,
                RandomFrame.direction(choice),
                new LoadOrigin.Given("load"),
                FORCE,
                loaded.length() * (0.1 + 0.8 * choice.nextDouble()))));
  }
}
