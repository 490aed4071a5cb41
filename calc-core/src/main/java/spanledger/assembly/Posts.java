package spanledger.assembly;

import java.util.List;
import java.util.Map;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;

/**
 * The posts under a platform: one at each end of every bay, on the north and the south side.
 *
 * @param part what they are
 * @param through whether each runs in one piece from the ground to the top rail; if not, it ends at
 *     the floor and rail posts stand on it
 * @param foot what the ground holds at each foot, one per {@link Freedom}
 * @param ground by post, for example {@code north1}, how high its ground lies above that of the
 *     platform, mm; posts that are not named stand at 0
 */
public record Posts(Part part, boolean through, List<Restraint> foot, Map<String, Double> ground) {
  public Posts {
    foot = List.copyOf(foot);
    ground = Map.copyOf(ground);
    if (foot.size() != Freedom.values().length) {
      throw new IllegalArgumentException("A foot has six restraints, found " + foot.size() + ".");
    }
  }
}
