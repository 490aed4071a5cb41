package spanledger.jointdesign;

import spanledger.provenance.Source;

/** Sources that mark numbers of a joint which a workbook takes from other cells or proves. */
public final class JointFeeds {

  /** Internal forces at the member end. */
  public static final Source AT_END = Source.derived("internal forces at the member end");

  /** Movements of a face, found by the solver. */
  public static final Source SOLVED = Source.derived("solver; the balance of the face proves it");

  private JointFeeds() {}
}
