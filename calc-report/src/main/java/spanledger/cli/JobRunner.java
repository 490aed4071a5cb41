package spanledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import spanledger.job.Job;
import spanledger.job.problem.Problem;

/** Calculates a job that was read without errors and writes what comes of it. */
@FunctionalInterface
interface JobRunner {

  /**
   * Where results go.
   *
   * @param directory takes the files; it need not exist yet
   * @param json whether the results are printed as JSON and not as text
   * @param quiet whether progress and summary are left out
   * @param pictures whether pictures of the structure are drawn
   * @param out takes the results that are printed
   * @param err takes progress and messages
   */
  record Output(
      Path directory,
      boolean json,
      boolean quiet,
      boolean pictures,
      PrintWriter out,
      PrintWriter err) {}

  /**
   * Calculates a job.
   *
   * @param file the job file
   * @param jobs the job, at each bound of stiffness that it asks for
   * @param warnings what its author should look at again; they are printed already
   * @return one of {@link ExitCode}
   * @throws IOException if a result cannot be written
   */
  int run(Path file, List<Job> jobs, List<Problem> warnings, Output output) throws IOException;
}
