package spanledger.bench;

import java.nio.file.Path;
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
import spanledger.analysis.FrameAnalysis;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.verdict.Assessment;
import spanledger.verdict.Assessor;

/**
 * The whole calculation of the packing house: actions, analysis, all combinations and moving
 * places, verdicts. Under 150 ms on one core is asked for.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class AssessmentBenchmark {

  private @Nullable Job job;

  /** Reads the job file; the root of the project is a system property, else this directory. */
  @Setup
  public void read() {
    Path file =
        Path.of(System.getProperty("spanledger.root", "."))
            .resolve("docs/examples/packing-house-inspection-platform.json");
    job = ((ReadJob.Accepted) new JobReader(Tables.shipped()).read(file)).job();
  }

  /** From the job to its verdicts. */
  @Benchmark
  public Assessment packingHouse() {
    Job of = java.util.Objects.requireNonNull(job);
    Actions actions =
        ActionPlanner.plan(
            of.frame(), of.surfaces(), of.rails(), of.userCases(), of.rules(), of.combinations());
    return new Assessor(of.rules(), of.rails(), of.placesPerSegment())
        .assess(new FrameAnalysis(of.frame()), actions, of.combinations());
  }
}
