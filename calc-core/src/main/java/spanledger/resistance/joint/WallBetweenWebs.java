package spanledger.resistance.joint;

import java.util.List;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;

/**
 * A row of loads that bend a wall between two webs.
 *
 * @param name of the place and the row
 * @param metal of the wall
 * @param width clear between the webs, mm
 * @param thickness of the wall, mm
 * @param clamped whether the webs hold its edges against turning
 * @param loads of one row across the wall, at least one
 * @param source where this is given
 */
public record WallBetweenWebs(
    String name,
    Metal metal,
    double width,
    double thickness,
    boolean clamped,
    List<Load> loads,
    Source source) {

  /**
   * A force square to the wall.
   *
   * @param name what puts it there
   * @param force its size, N
   * @param part of the force that acts here
   * @param toWeb to the nearer web, mm
   * @param first length along the wall on one side that no other row needs, mm
   * @param second the same on the other side, mm
   */
  public record Load(
      String name, Feed force, double part, double toWeb, double first, double second) {}

  public WallBetweenWebs {
    loads = List.copyOf(loads);
  }
}
