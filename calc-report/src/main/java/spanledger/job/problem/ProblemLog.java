package spanledger.job.problem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects the problems of one file while it is read. Not for several threads. */
public final class ProblemLog {

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<Place> reported = new HashSet<>();
  private int errors;

  /**
   * An empty log.
   *
   * @param file the file, as its path was given
   */
  public ProblemLog(String file) {
    this.file = file;
  }

  /** Adds an error. */
  public void error(Pointer pointer, Place place, Finding finding) {
    errors++;
    add(Severity.ERROR, pointer, place, finding);
  }

  /** Adds a warning. */
  public void warning(Pointer pointer, Place place, Finding finding) {
    add(Severity.WARNING, pointer, place, finding);
  }

  private void add(Severity severity, Pointer pointer, Place place, Finding finding) {
    problems.add(
        new Problem(
            severity, file, pointer, place, finding.found(), finding.expected(), finding.remedy()));
    reported.add(place);
  }

  /** Whether anything was reported at exactly this place. */
  public boolean hasReported(Place place) {
    return reported.contains(place);
  }

  /** Whether any error was reported. */
  public boolean hasErrors() {
    return errors > 0;
  }

  /** How many errors were reported. */
  public int errors() {
    return errors;
  }

  /** All problems, in file order. */
  public List<Problem> inOrder() {
    return problems.stream().sorted(Problem.IN_FILE_ORDER).toList();
  }
}
