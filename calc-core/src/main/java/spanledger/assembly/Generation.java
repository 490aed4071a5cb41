package spanledger.assembly;

import java.util.List;
import java.util.Optional;

/**
 * What came of generating an assembly: a frame, or all reasons why there is none.
 *
 * @param frame the frame, if there are no problems
 * @param problems the problems, in the order of the assembly
 */
public record Generation(Optional<GeneratedFrame> frame, List<AssemblyProblem> problems) {
  public Generation {
    problems = List.copyOf(problems);
  }
}
