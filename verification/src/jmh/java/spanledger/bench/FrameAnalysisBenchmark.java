package spanledger.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import spanledger.action.LoadCase;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.frame.Frame;

/** Analysis of walkways, from the frame to the results of all cases. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FrameAnalysisBenchmark {

  /** 30,024 unknown movements and 50 cases: under 10 s and 2 GiB is asked for. */
  private static final int LONG_BAYS = 833;

  /** About 100 segments. */
  private static final int SHORT_BAYS = 9;

  private Frame longFrame = new Walkway(1).frame();
  private List<LoadCase> longCases = List.of();
  private Frame shortFrame = longFrame;
  private List<LoadCase> shortCases = List.of();

  /** Makes the frames. */
  @Setup
  public void make() {
    Walkway longWalkway = new Walkway(LONG_BAYS);
    longFrame = longWalkway.frame();
    longCases = longWalkway.cases(50);
    Walkway shortWalkway = new Walkway(SHORT_BAYS);
    shortFrame = shortWalkway.frame();
    shortCases = shortWalkway.cases(9);
  }

  /** A long walkway, all cases. */
  @Benchmark
  public FrameSolution longWalkway() {
    return new FrameAnalysis(longFrame).solve(longCases);
  }

  /** A short walkway, all cases. */
  @Benchmark
  public FrameSolution shortWalkway() {
    return new FrameAnalysis(shortFrame).solve(shortCases);
  }
}
