package spanledger.assembly;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Vector;

/** How high posts must reach: platforms that adjoin share posts of one part on one foot. */
final class PostTops {

  private record Top(Vector foot, Part part, double level) {}

  private final List<Top> tops = new ArrayList<>();

  /** The tops of all posts of some platforms. */
  PostTops(List<Platform> platforms) {
    for (Platform platform : platforms) {
      for (Side side : List.of(Side.NORTH, Side.SOUTH)) {
        for (int line = 0; line < platform.lines().size(); line++) {
          tops.add(
              new Top(
                  platform.foot(side, line), platform.posts().part(), own(platform, side, line)));
        }
      }
    }
  }

  /** The level of the top of a platform's own post, global Z, mm. */
  static double own(Platform platform, Side side, int line) {
    return platform.posts().through() && platform.isRailed(side, line)
        ? platform.railLevel()
        : platform.floorLevel();
  }

  /** The level up to which a post reaches that stands on a foot, global Z, mm. */
  double of(Vector foot, Part part) {
    return tops.stream()
        .filter(top -> top.part().equals(part) && top.foot().minus(foot).norm() <= Draft.SAME_PLACE)
        .mapToDouble(Top::level)
        .max()
        .orElseThrow();
  }
}
