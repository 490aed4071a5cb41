package spanledger.verdict;

import java.util.List;
import java.util.Optional;
import spanledger.action.Actions;
import spanledger.envelope.Findings;
import spanledger.envelope.Proof;
import spanledger.frame.Frame;
import spanledger.memberdesign.MemberJudgement;

/**
 * Everything a job's calculation found.
 *
 * @param frame the frame
 * @param actions its actions
 * @param findings the governing combination, place and cut of every effect
 * @param members what a member code says of the members, if one was named
 * @param proof how well the solution meets equilibrium
 * @param verdicts the outcome of every check, and of what was not checked
 */
public record Assessment(
    Frame frame,
    Actions actions,
    Findings findings,
    Optional<MemberJudgement> members,
    Proof proof,
    List<Verdict> verdicts) {

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
