package spanledger.job;

/** How exactly the geometry of a job file must agree with itself; stated in docs/job-file.md. */
final class Tolerance {

  /**
   * Places nearer than this are the same place, mm. Aluminium frames are cut and drilled to about a
   * millimetre; what differs by less is a rounded coordinate, not a joint of its own. Common
   * practice, no source.
   */
  static final double SAME_PLACE = 1.0;

  private Tolerance() {}
}
