package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.LoadOrigin;
import spanledger.action.SegmentLoad;
import spanledger.frame.Segment;

/**
 * Loads on a member, put on its segments. Distances are measured along the member from where it
 * begins: its first node, moved by the offset of its start.
 */
final class MemberLoads {

  private final List<Segment> segments;
  private final Directions.Direction direction;
  private final LoadOrigin origin;

  /**
   * Loads of one direction on one member.
   *
   * @param segments the member's segments in order
   * @param direction the direction of a positive load
   * @param what the name of the load case, for its origin
   */
  MemberLoads(List<Segment> segments, Directions.Direction direction, String what) {
    this.segments = List.copyOf(segments);
    this.direction = direction;
    this.origin = new LoadOrigin.Given(what);
  }

  /** The length of a member along its segments, mm. */
  static double length(List<Segment> segments) {
    return segments.stream().mapToDouble(Segment::length).sum();
  }

  /**
   * A force at one place.
   *
   * @param force N
   * @param at from the start of the member, mm; places beyond its end count as its end
   */
  SegmentLoad point(double force, double at) {
    double begin = 0;
    for (Segment segment : segments.subList(0, segments.size() - 1)) {
      if (at <= begin + segment.length()) {
        return point(segment, force, at - begin);
      }
      begin += segment.length();
    }
    Segment last = segments.get(segments.size() - 1);
    return point(last, force, Math.min(at - begin, last.length()));
  }

  private SegmentLoad.Point point(Segment segment, double force, double at) {
    return new SegmentLoad.Point(
        segment, direction.axes(), direction.unit(), origin, force, Math.max(at, 0));
  }

  /**
   * A load along a stretch, one part for each segment that it touches.
   *
   * @param intensityFrom N/mm at {@code from}
   * @param intensityTo N/mm at {@code to}
   * @param from start of the stretch from the start of the member, mm
   * @param to end of the stretch, mm; greater than {@code from}
   */
  List<SegmentLoad> distributed(double intensityFrom, double intensityTo, double from, double to) {
    List<SegmentLoad> parts = new ArrayList<>();
    double slope = (intensityTo - intensityFrom) / (to - from);
    double begin = 0;
    for (Segment segment : segments) {
      double low = Math.max(from, begin);
      double high = Math.min(to, begin + segment.length());
      if (high > low) {
        parts.add(
            new SegmentLoad.Distributed(
                segment,
                direction.axes(),
                direction.unit(),
                origin,
                intensityFrom + slope * (low - from),
                intensityFrom + slope * (high - from),
                low - begin,
                Math.min(high - begin, segment.length())));
      }
      begin += segment.length();
    }
    return parts;
  }
}
