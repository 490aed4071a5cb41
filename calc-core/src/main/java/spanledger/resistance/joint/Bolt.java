package spanledger.resistance.joint;

import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;

/**
 * A bolt: its size, its grade, its head.
 *
 * @param size of the thread, head and holes
 * @param grade its strengths
 * @param countersunk whether the head is countersunk
 */
public record Bolt(BoltSize size, BoltGrade grade, boolean countersunk) {

  /**
   * @throws IllegalArgumentException if the strengths of the grade do not hold for the size
   */
  public Bolt {
    if (size.diameter() > grade.largestDiameter()) {
      throw new IllegalArgumentException(
          "Bolt "
              + size.name()
              + ": the strengths of "
              + grade.name()
              + " hold up to "
              + grade.largestDiameter()
              + " mm.");
    }
  }

  /** A hexagon bolt. */
  public static Bolt hexagon(BoltSize size, BoltGrade grade) {
    return new Bolt(size, grade, false);
  }

  /** Size and grade, for example {@code M8 A4-70}. */
  public String name() {
    return size.name() + " " + grade.name();
  }
}
