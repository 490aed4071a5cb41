package spanledger.joint;

/** To which part a ply belongs: forces go from the plies of one part to those of the other. */
public enum PlySide {
  /** It moves with the member. */
  MEMBER("member"),
  /** It belongs to what holds the member. */
  HOLDER("holder");

  private final String word;

  PlySide(String word) {
    this.word = word;
  }

  /** Its name in a job. */
  public String word() {
    return word;
  }
}
