package spanledger.resistance.member;

import spanledger.provenance.Source;

/**
 * A round hole through one wall.
 *
 * @param name of the group of holes in one cut; holes of one name weaken the same cut
 * @param place from the member's start, mm
 * @param plate the wall, by the name it has in {@link MemberSection#walls}
 * @param fromStart from the start of the wall's midline to the middle of the hole, mm
 * @param diameter of the hole, mm
 * @param filled whether a bolt fills it, so that compression passes
 * @param source where it comes from
 */
public record Hole(
    String name,
    double place,
    String plate,
    double fromStart,
    double diameter,
    boolean filled,
    Source source) {

  /**
   * @throws IllegalArgumentException if the diameter is not positive
   */
  public Hole {
    if (!(diameter > 0)) {
      throw new IllegalArgumentException(
          "Hole " + name + " has a diameter of " + diameter + " mm, but it must be positive.");
    }
  }
}
