package spanledger.bench;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import spanledger.action.LoadCase;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;

/**
 * How the cost of a linear analysis with 50 cases grows with the length of a walkway: processor
 * time of the thread, best of three after a warm-up, and the memory in use with all results held.
 */
public final class WalkwayCurve {

  private static final int[] BAYS = {28, 83, 278, 833, 2778};

  private WalkwayCurve() {}

  /** Prints a line per length. */
  public static void main(String[] none) {
    for (int round = 0; round < 10; round++) {
      run(28);
    }
    double[] before = {0, 0};
    for (int bays : BAYS) {
      double best = Double.POSITIVE_INFINITY;
      double[] now = {0, 0, 0};
      for (int round = 0; round < 3; round++) {
        now = run(bays);
        best = Math.min(best, now[1]);
      }
      double exponent =
          before[0] > 0 ? Math.log(best / before[1]) / Math.log(now[0] / before[0]) : Double.NaN;
      System.out.printf(
          Locale.ROOT,
          "%.0f unknowns: %.0f ms, %.0f MiB in use, exponent %.2f%n",
          now[0],
          best,
          now[2],
          exponent);
      before = new double[] {now[0], best};
    }
  }

  private static double[] run(int bays) {
    Walkway walkway = new Walkway(bays);
    List<LoadCase> cases = walkway.cases(50);
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    FrameAnalysis analysis = new FrameAnalysis(walkway.frame());
    FrameSolution solution = analysis.solve(cases);
    long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    double used = (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0;
    if (solution.results().size() != cases.size()) {
      throw new IllegalStateException("Results are missing.");
    }
    return new double[] {analysis.unknowns(), 1e-6 * (end - start), used};
  }
}
