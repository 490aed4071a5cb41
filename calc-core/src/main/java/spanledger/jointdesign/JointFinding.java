package spanledger.jointdesign;

import spanledger.envelope.Governing;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * The worst of one check of one face of a joint.
 *
 * @param run the joint under the combination that governs
 * @param face the face
 * @param check the run of the check that governs
 * @param use the step of it
 * @param governing the combination and the cut at the member end; its value is the use
 */
public record JointFinding(
    JointRun run, FaceRun face, JointCheck check, JointUse use, Governing governing) {

  /** The part that governs, for example {@code edge-north, start, post, bolt 2}. */
  public String part() {
    return check.working().label();
  }

  /** Whether the check hangs on loads; distances of holes and tightening do not. */
  public boolean hangsOnLoads() {
    return hangsOnLoads(check.working());
  }

  private static boolean hangsOnLoads(Working working) {
    for (Feed feed : working.feeds()) {
      boolean loaded =
          feed instanceof Feed.Result result
              ? hangsOnLoads(result.from())
              : feed instanceof Feed.Given given
                  && (given.source().equals(JointFeeds.AT_END)
                      || given.source().equals(JointFeeds.SOLVED));
      if (loaded) {
        return true;
      }
    }
    return false;
  }
}
