package spanledger.job.problem;

import java.util.Comparator;

/**
 * One thing that is wrong with a job file.
 *
 * @param severity how grave it is
 * @param file the file, as its path was given
 * @param pointer the value or key meant
 * @param place where that stands in the file
 * @param found what was found
 * @param expected what was expected instead
 * @param remedy how to mend it
 */
public record Problem(
    Severity severity,
    String file,
    Pointer pointer,
    Place place,
    String found,
    String expected,
    String remedy) {

  /** By place, then by gravity, then by pointer and words; equal input gives equal order. */
  public static final Comparator<Problem> IN_FILE_ORDER =
      Comparator.comparing(Problem::place)
          .thenComparing(Problem::severity)
          .thenComparing(Problem::pointer)
          .thenComparing(Problem::found);

  /** Whether the job cannot be calculated because of this. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }
}
