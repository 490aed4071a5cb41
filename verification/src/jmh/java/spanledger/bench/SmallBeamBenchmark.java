package spanledger.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.SegmentLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.frame.Frame;
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

/** A beam of nine segments and ten nodes, 60 movements: 20,000 per second are asked for. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class SmallBeamBenchmark {

  private static final int NODES = 10;
  private static final double SPACING = 1_000;

  private @Nullable Frame beam;
  private @Nullable LoadCase loads;
  private @Nullable EndStrength strength;
  private @Nullable StateAnalysis firstOrder;
  private @Nullable StateAnalysis secondOrder;
  private double factor = 1;

  /** Makes the beam. */
  @Setup
  public void make() {
    Member like = new Walkway(1).frame().members().get(0);
    List<Node> nodes = new ArrayList<>();
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < NODES; i++) {
      Node node = new Node("N" + i, new Vector(i * SPACING, 0, 0));
      nodes.add(node);
      if (i % 3 == 0) {
        supports.add(
            new Support(
                node,
                List.of(
                    i == 0 ? Restraint.FIXED : Restraint.FREE,
                    Restraint.FIXED,
                    Restraint.FIXED,
                    Restraint.FIXED,
                    Restraint.FREE,
                    Restraint.FREE)));
      }
    }
    Member member =
        new Member(
            "beam",
            MemberRole.FLOOR,
            nodes,
            like.section(),
            like.alloy(),
            0,
            MemberEnd.RIGID,
            MemberEnd.RIGID);
    Frame frame = new Frame(nodes, List.of(member), supports);
    List<SegmentLoad> along = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      along.add(
          new SegmentLoad.Distributed(
              segment,
              LoadAxes.GLOBAL,
              Vector.DOWN,
              new LoadOrigin.Given("floor"),
              2,
              2,
              0,
              segment.length()));
    }
    beam = frame;
    loads = new LoadCase("floor", List.of(), along);
    strength = new EndStrength(member);
    firstOrder = new StateAnalysis(frame, StateOptions.FIRST_ORDER);
    secondOrder = new StateAnalysis(frame, StateOptions.SECOND_ORDER);
  }

  /** A new beam each time. */
  @Benchmark
  public double newBeam() {
    return new FrameAnalysis(Objects.requireNonNull(beam))
        .solve(List.of(Objects.requireNonNull(loads)))
        .results()
        .get(0)
        .equilibrium()
        .nodeForce();
  }

  /** A new beam each time, with stresses and strength at both ends of every segment. */
  @Benchmark
  public double newCheckedBeam() {
    FrameSolution solution =
        new FrameAnalysis(Objects.requireNonNull(beam))
            .solve(List.of(Objects.requireNonNull(loads)));
    CaseResult result = solution.results().get(0);
    return Objects.requireNonNull(strength).worst(result);
  }

  /** The same beam under other loads each time. */
  @Benchmark
  public double otherLoads() {
    return solved(Objects.requireNonNull(firstOrder));
  }

  /** The same in second order. */
  @Benchmark
  public double otherLoadsInSecondOrder() {
    return solved(Objects.requireNonNull(secondOrder));
  }

  private double solved(StateAnalysis analysis) {
    factor = factor > 2 ? 1 : factor + 1e-4;
    LoadState.Part part = new LoadState.Part(Objects.requireNonNull(loads), factor);
    StateOutcome outcome = analysis.solve(new LoadState("state", List.of(part)));
    return ((StateOutcome.Solved) outcome).result().effort().residual();
  }
}
