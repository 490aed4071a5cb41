package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Surface;
import spanledger.frame.Frame;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/** Heights and places of a structure that drawings give sizes of, mm. */
final class Levels {

  private Levels() {}

  /** Whether a segment is level. */
  static boolean isLevel(Segment segment) {
    return Math.abs(segment.to().z() - segment.from().z()) <= Sizes.SAME;
  }

  /** Whether a segment is upright. */
  static boolean isUpright(Segment segment) {
    Vector way = segment.to().minus(segment.from());
    return Math.hypot(way.x(), way.y()) <= Sizes.SAME;
  }

  /** The height of a level floor. */
  static Optional<Double> of(Surface surface) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Node corner : surface.corners()) {
      low = Math.min(low, corner.place().z());
      high = Math.max(high, corner.place().z());
    }
    return high - low <= Sizes.SAME ? Optional.of(low) : Optional.empty();
  }

  /** The heights of all level floors, from below. */
  static List<Double> floors(List<Surface> surfaces) {
    return Sizes.distinct(surfaces.stream().flatMap(s -> of(s).stream()).toList());
  }

  /** The heights of feet, floors, level rails and ties, and of the highest place, from below. */
  static List<Double> all(Subject subject) {
    List<Double> heights = new ArrayList<>(floors(subject.surfaces()));
    Frame frame = subject.frame();
    for (Support support : frame.supports()) {
      heights.add(support.node().place().z());
    }
    double highest = Double.NEGATIVE_INFINITY;
    for (Segment segment : frame.segments()) {
      MemberRole role = segment.member().role();
      if (isLevel(segment) && (role == MemberRole.RAIL || role == MemberRole.BRACE)) {
        heights.add(segment.from().z());
      }
      highest = Math.max(highest, Math.max(segment.from().z(), segment.to().z()));
    }
    heights.add(highest);
    return Sizes.distinct(heights);
  }

  /** Where things stand on the ground or go up: feet and legs. */
  static List<Vector> standing(Subject subject) {
    List<Vector> places = new ArrayList<>();
    for (Support support : subject.frame().supports()) {
      places.add(support.node().place());
    }
    for (Segment segment : subject.frame().segments()) {
      if (segment.member().role() == MemberRole.LEG && isUpright(segment)) {
        places.add(segment.from());
      }
    }
    return places;
  }
}
