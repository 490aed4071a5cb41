package spanledger.jointdesign;

import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;

/** Sources that mark numbers of a joint which a workbook takes from other cells or proves. */
public final class JointFeeds {

  /** Internal forces at the member end. */
  public static final Source AT_END = Source.derived("internal forces at the member end");

  /** Force or moment of a support on the structure. */
  public static final Source AT_SUPPORT = Source.derived("reaction of the support");

  /** Movements of a face, found by the solver. */
  public static final Source SOLVED = Source.derived("solver; the balance of the face proves it");

  /** Characteristic values of tests. */
  public static final Source TESTED = Source.derived("characteristic value of the tests");

  /** Zero, where nothing comes before. */
  static final Source NOTHING_BEFORE = Source.derived("Nothing comes before the first");

  private JointFeeds() {}

  /** Whether a number hangs on the loads, and stands in other cells of a workbook. */
  public static boolean isOfLoads(Feed.Given given) {
    Source source = given.source();
    return source.equals(AT_END) || source.equals(AT_SUPPORT) || source.equals(SOLVED);
  }
}
