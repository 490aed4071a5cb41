package spanledger.job;

import java.util.List;
import spanledger.job.problem.Problem;

/** What came of reading a job file. */
public sealed interface ReadJob {

  /** All problems, in the order of the file. */
  List<Problem> problems();

  /**
   * The job can be calculated.
   *
   * @param job the job
   * @param warnings what its author should look at again
   */
  record Accepted(Job job, List<Problem> warnings) implements ReadJob {
    public Accepted {
      warnings = List.copyOf(warnings);
    }

    @Override
    public List<Problem> problems() {
      return warnings;
    }
  }

  /**
   * The job cannot be calculated.
   *
   * @param problems why, at least one of them an error; warnings too
   */
  record Refused(List<Problem> problems) implements ReadJob {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
