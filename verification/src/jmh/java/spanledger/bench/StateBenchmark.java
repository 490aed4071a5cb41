package spanledger.bench;

import java.nio.file.Path;
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
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.Combination;
import spanledger.action.LoadPath;
import spanledger.action.MovingLoad;
import spanledger.frame.Frame;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.state.LoadState;
import spanledger.state.StateAnalysis;
import spanledger.state.StateOptions;
import spanledger.state.StateOutcome;

/**
 * All combinations of the packing house in second order, each with its elastic critical factor:
 * under 400 ms on one core is asked for. A moving load stands in the middle of its first path.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class StateBenchmark {

  private @Nullable Frame frame;
  private List<LoadState> states = List.of();

  /** Reads the job and plans its actions. */
  @Setup
  public void read() {
    Path file =
        Path.of(System.getProperty("spanledger.root", "."))
            .resolve("docs/examples/packing-house-inspection-platform.json");
    Job job = ((ReadJob.Accepted) new JobReader(Tables.shipped()).read(file)).job();
    frame = job.frame();
    Actions actions =
        ActionPlanner.plan(
            job.frame(),
            job.surfaces(),
            job.rails(),
            job.userCases(),
            job.rules(),
            job.combinations());
    List<LoadState> all = new ArrayList<>();
    for (Combination combination : actions.combinations()) {
      LoadState state = LoadState.of(combination);
      if (combination.moving().isPresent()) {
        Combination.MovingTerm term = combination.moving().get();
        MovingLoad load = term.load();
        LoadPath path = load.paths().get(0);
        double middle = 0.5 * (load.first(path) + load.last(path));
        state = state.with(load.name(), load.placed(path, middle), combination.factor(term));
      }
      all.add(state);
    }
    states = List.copyOf(all);
  }

  /** From the frame to results and critical factors of all combinations. */
  @Benchmark
  public double secondOrderWithCriticalFactors() {
    StateAnalysis analysis =
        new StateAnalysis(Objects.requireNonNull(frame), StateOptions.SECOND_ORDER);
    double least = Double.POSITIVE_INFINITY;
    for (LoadState state : states) {
      if (analysis.solve(state) instanceof StateOutcome.Solved solved) {
        least = Math.min(least, analysis.critical(solved.result(), 1000).factor());
      }
    }
    return least;
  }

  /** The states. */
  List<LoadState> states() {
    return states;
  }

  /** The frame of the states. */
  Frame frame() {
    return Objects.requireNonNull(frame);
  }
}
