package spanledger.overturning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Rail;
import spanledger.action.RailKind;
import spanledger.action.Surface;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.provenance.Source;

/**
 * A level wind from any direction, given as a pressure on projected areas.
 *
 * @param pressure on the area seen along the wind, force coefficient included, MPa
 * @param source where the pressure comes from
 * @param guardrails what the wind meets at guardrails, if anything
 * @param deckDepth depth of the edges of floors that the wind meets, mm; 0 if they are not to be
 *     counted
 * @param areas further areas
 */
public record Wind(
    double pressure,
    Source source,
    Optional<Screen> guardrails,
    double deckDepth,
    List<Exposure> areas) {

  /** Nodes nearer than this are one corner, mm: that of geometry in job files. */
  private static final double SAME_PLACE = 1.0;

  public Wind {
    areas = List.copyOf(areas);
  }

  /**
   * What the wind meets at guardrails.
   *
   * @param height from the floor to the top rail, mm
   * @param solidity share of the guardrail's face that is not open
   */
  public record Screen(double height, double solidity) {}

  /**
   * An area that the wind meets.
   *
   * @param name what it is
   * @param centre where the force acts, global, mm
   * @param area mm²
   * @param faces the level direction that it faces, of length 1; empty if it looks alike from all
   *     sides
   * @param windwardOnly whether only the side towards the wind counts
   */
  public record Exposure(
      String name, Vector centre, double area, Optional<Vector> faces, boolean windwardOnly) {

    /** The area seen along a level direction, mm². */
    double seen(Vector along) {
      if (faces.isEmpty()) {
        return area;
      }
      // A face that looks against the wind is windward.
      double facing = -faces.get().dot(along);
      return area * (windwardOnly ? Math.max(0, facing) : Math.abs(facing));
    }
  }

  /** All areas that the wind meets on a structure. */
  public List<Exposure> exposures(Frame frame, List<Surface> floors, List<Rail> rails) {
    List<Exposure> all = new ArrayList<>();
    guardrails.ifPresent(screen -> addRails(screen, frame, rails, all));
    if (deckDepth > 0) {
      addEdges(floors, all);
    }
    all.addAll(areas);
    return all;
  }

  private static void addRails(Screen screen, Frame frame, List<Rail> rails, List<Exposure> into) {
    for (Rail rail : rails) {
      if (rail.kind() == RailKind.TOP) {
        for (Member member : rail.members()) {
          for (Segment segment : frame.segmentsOf(member)) {
            Vector middle = segment.from().plus(segment.to()).times(0.5);
            into.add(
                new Exposure(
                    "guardrail under " + segment.name(),
                    middle.plus(Vector.DOWN.times(screen.height() / 2)),
                    segment.length() * screen.height() * screen.solidity(),
                    Optional.of(rail.outward()),
                    false));
          }
        }
      }
    }
  }

  private void addEdges(List<Surface> floors, List<Exposure> into) {
    for (Surface floor : floors) {
      List<Node> corners = floor.corners();
      Vector centre = corners.get(0).place().plus(corners.get(2).place()).times(0.5);
      for (int i = 0; i < corners.size(); i++) {
        Vector from = corners.get(i).place();
        Vector to = corners.get((i + 1) % corners.size()).place();
        Vector side = to.minus(from);
        Vector across = new Vector(side.y(), -side.x(), 0);
        if (across.norm() > SAME_PLACE && !isShared(floor, from, to, floors)) {
          Vector middle = from.plus(to).times(0.5);
          Vector outward = across.unit();
          into.add(
              new Exposure(
                  "edge " + (i + 1) + " of " + floor.name(),
                  middle,
                  side.norm() * deckDepth,
                  Optional.of(outward.dot(middle.minus(centre)) < 0 ? outward.times(-1) : outward),
                  true));
        }
      }
    }
  }

  /** Whether another floor goes on beyond a side. */
  private static boolean isShared(Surface floor, Vector from, Vector to, List<Surface> floors) {
    return floors.stream()
        .filter(other -> !other.name().equals(floor.name()))
        .anyMatch(other -> has(other, from) && has(other, to));
  }

  private static boolean has(Surface floor, Vector place) {
    return floor.corners().stream().anyMatch(c -> c.place().minus(place).norm() <= SAME_PLACE);
  }

  /** The force on an area in a wind along a level direction. */
  PlacedForce force(Exposure exposure, Vector along) {
    return new PlacedForce(
        "wind on " + exposure.name(),
        along.times(pressure * exposure.seen(along)),
        exposure.centre());
  }
}
