package spanledger.verdict;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.Actions;
import spanledger.behaviour.Behaviour;
import spanledger.envelope.Findings;
import spanledger.envelope.ForceEnvelope;
import spanledger.envelope.Proof;
import spanledger.frame.Frame;
import spanledger.jointdesign.JointJudgement;
import spanledger.memberdesign.MemberJudgement;

/**
 * Everything a job's calculation found.
 *
 * @param frame the frame
 * @param actions its actions
 * @param findings the governing combination, place and cut of every effect
 * @param forces the internal forces of all members, first order
 * @param behaviour how the frame behaves under its combinations
 * @param members what a member code says of the members, if one was named
 * @param joints what a code says of the joints, if the job describes some
 * @param whole how the structure stands as a whole, if the job says how it stands
 * @param proof how well the solution meets equilibrium
 * @param verdicts the outcome of every check, and of what was not checked
 */
public record Assessment(
    Frame frame,
    Actions actions,
    Findings findings,
    List<ForceEnvelope> forces,
    Behaviour behaviour,
    Optional<MemberJudgement> members,
    Optional<JointJudgement> joints,
    Optional<WholeStructure> whole,
    Proof proof,
    List<Verdict> verdicts) {

  public Assessment {
    forces = List.copyOf(forces);
    verdicts = List.copyOf(verdicts);
  }

  /** How many verdicts have this outcome. */
  public long count(Status status) {
    return verdicts.stream().filter(v -> v.status() == status).count();
  }

  /**
   * The worse of each verdict of this and of another run of the same job.
   *
   * @param here what distinguishes this run, for remarks
   * @param there what distinguishes the other
   */
  public Assessment worse(Assessment other, String here, String there) {
    Map<String, Verdict> worst = new LinkedHashMap<>();
    verdicts.forEach(v -> worst.put(v.key(), v));
    for (Verdict theirs : other.verdicts) {
      Verdict ours = worst.get(theirs.key());
      if (ours == null) {
        worst.put(theirs.key(), theirs.withRemark(there));
      } else if (theirs.isWorseThan(ours)) {
        worst.put(theirs.key(), theirs.withRemark(there));
      } else if (ours.isWorseThan(theirs)) {
        worst.put(theirs.key(), ours.withRemark(here));
      }
    }
    Proof both =
        new Proof(
            proof.cases() + other.proof.cases(),
            Math.max(proof.worstResidual(), other.proof.worstResidual()),
            proof.freedoms());
    return new Assessment(
        frame,
        actions,
        findings,
        forces,
        behaviour,
        members,
        joints,
        whole,
        both,
        List.copyOf(worst.values()));
  }

  /** Whether every check was made and passed. */
  public boolean allPassed() {
    return count(Status.FAILED) == 0 && count(Status.NOT_CHECKED) == 0;
  }
}
