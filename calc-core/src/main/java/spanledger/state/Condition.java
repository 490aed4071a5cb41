package spanledger.state;

/** What a hold with play, or one that acts one way, does in a state. */
public enum Condition {
  /** A one-way hold that bears. */
  BEARS("bears"),
  /** A one-way hold that does nothing: a foot lifted, a tie slack, a stop not reached. */
  OPEN("open"),
  /** Within its free play: nothing resists. */
  IN_PLAY("in its free play"),
  /** Play taken up. */
  ENGAGED("play taken up"),
  /** Beyond the movement at which its second stiffness takes over. */
  SECOND_STIFFNESS("on its second stiffness");

  private final String words;

  Condition(String words) {
    this.words = words;
  }

  /** The condition in words. */
  public String words() {
    return words;
  }
}
