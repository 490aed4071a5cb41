package spanledger.jointdesign;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * A use of a check among those of a joint, the same whatever the loads.
 *
 * @param face which face
 * @param faceName its name
 * @param check which check of the face
 * @param part the part that is checked, in words
 * @param use the step
 * @param hangsOnLoads whether its value may differ from load to load
 */
record CheckPlace(
    int face, String faceName, int check, String part, JointUse use, boolean hangsOnLoads) {

  static CheckPlace of(JointRun run, int face, int check, JointUse use) {
    FaceRun at = run.faces().get(face);
    JointCheck found = at.checks().get(check);
    return new CheckPlace(
        face,
        at.name(),
        check,
        found.working().label(),
        use,
        hangsOnLoads(found.working(), Collections.newSetFromMap(new IdentityHashMap<>())));
  }

  /** What uses have in common of which the worst is kept. */
  String kind() {
    return faceName + "|" + use.words() + "|" + use.clause();
  }

  /**
   * @param seen workings that were looked at already; several steps may share one
   */
  private static boolean hangsOnLoads(Working working, Set<Working> seen) {
    if (!seen.add(working)) {
      return false;
    }
    for (Feed feed : working.feeds()) {
      boolean loaded =
          feed instanceof Feed.Result result
              ? hangsOnLoads(result.from(), seen)
              : feed instanceof Feed.Given given && JointFeeds.isOfLoads(given);
      if (loaded) {
        return true;
      }
    }
    return false;
  }
}
