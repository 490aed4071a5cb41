package spanledger.assembly;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Vector;

/**
 * A rectangular platform or walkway on posts. Its length runs along X, its width along Y; sizes are
 * between the centre lines of its members.
 *
 * @param name unique among platforms
 * @param corner its south-west corner at its ground, global, mm
 * @param length along X, mm
 * @param width along Y, mm
 * @param floorHeight of the floor above its ground, mm
 * @param bays the lengths of its bays from the west, mm; their sum is the length
 * @param posts what it stands on
 * @param edgeBeams the beams along its long sides
 * @param endBeams what lies across at both ends where the first bearer does not; may be nothing
 * @param bearers the bearers across it
 * @param deck its decking
 * @param bracing what keeps it from swaying
 * @param guardrail its guardrail, if there is one
 * @param site what is known beyond its frame
 */
public record Platform(
    String name,
    Vector corner,
    double length,
    double width,
    double floorHeight,
    List<Double> bays,
    Posts posts,
    EdgeBeams edgeBeams,
    Optional<Part> endBeams,
    CrossBearers bearers,
    Deck deck,
    Bracing bracing,
    Optional<Guardrail> guardrail,
    PlatformSite site) {

  public Platform {
    bays = List.copyOf(bays);
  }

  /** The level of its floor, global Z, mm. */
  public double floorLevel() {
    return corner.z() + floorHeight;
  }

  /** The level of its top rail, global Z, mm; that of its floor if it has none. */
  double railLevel() {
    return floorLevel() + guardrail.map(Guardrail::height).orElse(0.0);
  }

  /** Whether the guardrail of any side ends at or passes a post of a long side. */
  boolean isRailed(Side side, int line) {
    return guardrail
        .map(
            rail ->
                rail.sides().contains(side)
                    || (line == 0 && rail.sides().contains(Side.WEST))
                    || (line == bays.size() && rail.sides().contains(Side.EAST)))
        .orElse(false);
  }

  /** The foot of a post of a long side, global, mm. */
  Vector foot(Side side, int line) {
    Vector onFloor = onSide(side, lines().get(line));
    double raised = posts.ground().getOrDefault(side.words() + (line + 1), 0.0);
    return new Vector(onFloor.x(), onFloor.y(), corner.z() + raised);
  }

  /** The length of a side, mm. */
  public double lengthOf(Side side) {
    return side.isLong() ? length : width;
  }

  /** The place on the floor at some distance along a side, global, mm. */
  public Vector onSide(Side side, double at) {
    double x = side == Side.EAST ? length : 0;
    double y = side == Side.NORTH ? width : 0;
    return corner.plus(new Vector(x, y, floorHeight)).plus(side.along().times(at));
  }

  /** The distances of the posts from the west end, mm: one more than there are bays. */
  public List<Double> lines() {
    double[] lines = new double[bays.size() + 1];
    for (int i = 0; i < bays.size(); i++) {
      lines[i + 1] = lines[i] + bays.get(i);
    }
    return Arrays.stream(lines).boxed().toList();
  }
}
