package spanledger.assembly;

import java.util.List;

/**
 * Why an assembly makes no structure.
 *
 * @param path where: {@code platforms} or {@code stairs}, the name, then keys and list places (from
 *     0) as in a job file
 * @param found what was found
 * @param expected what was expected, with the range that would work
 * @param remedy how to mend it
 */
public record AssemblyProblem(List<String> path, String found, String expected, String remedy) {
  public AssemblyProblem {
    path = List.copyOf(path);
  }

  /** All of it on one line. */
  public String words() {
    return String.join("/", path)
        + ": found "
        + found
        + "; expected "
        + expected
        + "; to mend: "
        + remedy
        + ".";
  }
}
