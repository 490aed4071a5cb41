package spanledger.verification.jointdesign;

import java.util.ArrayList;
import java.util.List;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** The runs that lead to a number, each after those that feed it. */
final class JointRuns {

  private JointRuns() {}

  static List<Working> before(Feed feed) {
    List<Working> runs = new ArrayList<>();
    add(feed, runs);
    return runs;
  }

  private static void add(Feed feed, List<Working> runs) {
    if (feed instanceof Feed.Result result && !runs.contains(result.from())) {
      result.from().feeds().forEach(earlier -> add(earlier, runs));
      runs.add(result.from());
    }
  }
}
