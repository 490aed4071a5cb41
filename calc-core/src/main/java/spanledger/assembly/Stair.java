package spanledger.assembly;

import java.util.List;
import java.util.Optional;
import spanledger.frame.Restraint;

/**
 * One straight flight of stairs, from the ground or a lower platform up to a side of a platform. It
 * runs square to that side. The last rise leads to the floor, so there is one tread fewer than
 * rises. Its stringers lie on the line through the nosings.
 *
 * @param name unique among stairs
 * @param to the name of the platform that it leads up to
 * @param side the side of that platform
 * @param offset from the beginning of the side to the nearer stringer, mm
 * @param from the name of the platform from which it rises; empty if it stands on the ground
 * @param ground level of its foot where it stands on the ground, global Z, mm
 * @param width between the stringers, mm
 * @param rises the number of rises
 * @param going the level distance from nosing to nosing, mm; empty if the pitch is given, or
 *     between two platforms, whose distance decides it
 * @param pitch the angle of the line through the nosings, rad; empty if the going is given
 * @param stringer what the stringers are
 * @param tread what the treads are
 * @param treadPanel the name of the panel that the treads are, if it is given what they carry
 * @param foot what the ground holds at each foot, one per {@link spanledger.frame.Freedom}
 * @param rails its guardrails, if it has any
 * @param site what is known beyond its frame
 */
public record Stair(
    String name,
    String to,
    Side side,
    double offset,
    Optional<String> from,
    double ground,
    double width,
    int rises,
    Optional<Double> going,
    Optional<Double> pitch,
    Part stringer,
    Part tread,
    Optional<String> treadPanel,
    List<Restraint> foot,
    Optional<StairRails> rails,
    StairSite site) {
  public Stair {
    foot = List.copyOf(foot);
  }

  /**
   * The guardrails of a flight, one on each side, on upright posts on the stringers. Their upper
   * ends are held by the posts of the platform's guardrail.
   *
   * @param height of the top rail above the line through the nosings, upright, mm
   * @param topRail what the top rail is
   * @param middleRails the middle rails with their heights above that line
   * @param post what the posts are
   * @param postSpacing the greatest level distance between posts, mm
   */
  public record StairRails(
      double height,
      Part topRail,
      List<Guardrail.MiddleRail> middleRails,
      Part post,
      double postSpacing) {
    public StairRails {
      middleRails = List.copyOf(middleRails);
    }
  }
}
