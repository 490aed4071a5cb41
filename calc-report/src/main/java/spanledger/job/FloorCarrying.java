package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.action.DeckShares;
import spanledger.action.Surface;
import spanledger.frame.Frame;

/** Checks that the members of a floor carry all of it. */
final class FloorCarrying {

  /**
   * Part of the floor that may be left over or carried twice: the tolerance of 1 mm on sides of a
   * metre.
   */
  private static final double TOLERANCE = 2e-3;

  private FloorCarrying() {}

  /** What is wrong with how a floor is carried. */
  static Optional<String> fault(Surface surface, Frame frame) {
    List<DeckShares.Share> shares;
    try {
      shares = DeckShares.of(surface, frame);
    } catch (IllegalArgumentException e) {
      return Optional.of("a floor that cannot be shared out to its members: " + e.getMessage());
    }
    double carried = shares.stream().mapToDouble(DeckShares.Share::area).sum();
    double area = new FloorShape(surface.corners()).area();
    if (Math.abs(carried - area) <= TOLERANCE * area) {
      return Optional.empty();
    }
    String words = Lengths.area(carried) + " of its " + Lengths.area(area);
    return Optional.of(
        carried < area
            ? "a floor whose members reach only " + words
            : "a floor of which some is carried twice: members carry " + words);
  }
}
