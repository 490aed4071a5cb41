package spanledger.stability;

/** How a frame moves when it buckles or vibrates. Immutable. */
public final class ModeShape {

  private final double[] movements;
  private final String words;

  /**
   * A shape.
   *
   * @param movements six per node, mm and rad, global axes, copied; the greatest shift (or turn
   *     times half the longest segment at its node) is 1
   * @param words what moves, for readers
   */
  public ModeShape(double[] movements, String words) {
    this.movements = movements.clone();
    this.words = words;
  }

  /** Six per node, as a new array. */
  public double[] movements() {
    return movements.clone();
  }

  /** One movement, by its place among them. */
  public double movement(int freedom) {
    return movements[freedom];
  }

  /** What moves. */
  public String words() {
    return words;
  }
}
