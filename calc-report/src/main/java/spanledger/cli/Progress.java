package spanledger.cli;

import java.util.Locale;

/** Says what is going on, on a terminal only. */
final class Progress {

  private final JobRunner.Output output;
  private final boolean shown;
  private final long start = System.nanoTime();

  // From Java 22 on there is a console in a pipe, too; progress then goes to the error stream only.
  @SuppressWarnings("SystemConsoleNull")
  Progress(JobRunner.Output output) {
    this.output = output;
    this.shown = !output.quiet() && !output.json() && System.console() != null;
  }

  void step(String what) {
    if (shown) {
      output.err().printf(Locale.ROOT, "%5.1f s  %s ...%n", seconds(), what);
      output.err().flush();
    }
  }

  void done() {
    if (shown) {
      output.err().printf(Locale.ROOT, "%5.1f s  done%n", seconds());
      output.err().flush();
    }
  }

  private double seconds() {
    return (System.nanoTime() - start) * 1e-9;
  }
}
