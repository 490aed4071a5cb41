package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.job.problem.Problem;

/** What came of reading a job file. */
public sealed interface ReadJob {

  /** All problems, in the order of the file. */
  List<Problem> problems();

  /**
   * The job can be calculated.
   *
   * @param job the job, at the lower bound of stiffness where both are asked for
   * @param upper the same job at the upper bound, if both are asked for and differ
   * @param warnings what its author should look at again
   */
  record Accepted(Job job, Optional<Job> upper, List<Problem> warnings) implements ReadJob {
    public Accepted {
      warnings = List.copyOf(warnings);
    }

    @Override
    public List<Problem> problems() {
      return warnings;
    }

    /** The job at each bound of stiffness that it is to be calculated with. */
    public List<Job> jobs() {
      return upper.map(u -> List.of(job, u)).orElseGet(() -> List.of(job));
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
