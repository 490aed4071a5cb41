package spanledger.job.outline;

import java.util.List;
import spanledger.job.problem.Problem;
import spanledger.section.Extrusion;

/** What came of reading an outline file. */
public sealed interface ReadOutline {

  /** All problems, in the order of the file. */
  List<Problem> problems();

  /**
   * The section can be worked out.
   *
   * @param extrusion the section as drawn, moved as its placement says
   * @param sha256 the SHA-256 of the file's bytes, in hexadecimal
   * @param warnings what its author should look at again
   */
  record Accepted(Extrusion extrusion, String sha256, List<Problem> warnings)
      implements ReadOutline {
    public Accepted {
      warnings = List.copyOf(warnings);
    }

    @Override
    public List<Problem> problems() {
      return warnings;
    }
  }

  /**
   * The section cannot be worked out.
   *
   * @param problems why, at least one of them an error; warnings too
   */
  record Refused(List<Problem> problems) implements ReadOutline {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
