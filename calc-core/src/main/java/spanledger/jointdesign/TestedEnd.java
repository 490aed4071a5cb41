package spanledger.jointdesign;

/**
 * A member end that tests say how it turns.
 *
 * @param end the member end
 * @param turn the turn that was tested
 * @param tests the tests
 */
public record TestedEnd(JointEnd end, Turn turn, JointTests tests) {

  /** A turn of a member end. */
  public enum Turn {
    TORSION("torsion", "C_u"),
    ABOUT_Y("bending about y", "C_v"),
    ABOUT_Z("bending about z", "C_w");

    private final String words;
    private final String moment;

    Turn(String words, String moment) {
      this.words = words;
      this.moment = moment;
    }

    /** The turn, in words. */
    public String words() {
      return words;
    }

    /** Its moment among the steps of {@link EndForcesOnJoint}. */
    String moment() {
      return moment;
    }
  }
}
