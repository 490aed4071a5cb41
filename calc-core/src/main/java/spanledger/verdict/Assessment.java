package spanledger.verdict;

import java.util.List;
import spanledger.action.Actions;
import spanledger.envelope.Findings;
import spanledger.envelope.Proof;
import spanledger.frame.Frame;

/**
 * Everything a job's calculation found.
 *
 * @param frame the frame
 * @param actions its actions
 * @param findings the governing combination, place and cut of every effect
 * @param proof how well the solution meets equilibrium
 * @param verdicts the outcome of every check, and of what was not checked
 */
public record Assessment(
    Frame frame, Actions actions, Findings findings, Proof proof, List<Verdict> verdicts) {

  public Assessment {
    verdicts = List.copyOf(verdicts);
  }

  /** How many verdicts have this outcome. */
  public long count(Status status) {
    return verdicts.stream().filter(v -> v.status() == status).count();
  }

  /** Whether every check was made and passed. */
  public boolean allPassed() {
    return count(Status.FAILED) == 0 && count(Status.NOT_CHECKED) == 0;
  }
}
