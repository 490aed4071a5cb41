package spanledger.action;

import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** A load on a segment between its nodes. */
public sealed interface SegmentLoad {

  /** The loaded segment. */
  Segment segment();

  /** The axes of {@link #direction()}. */
  LoadAxes axes();

  /** The direction of a positive load, of length 1. */
  Vector direction();

  /** Why it has this size. */
  LoadOrigin origin();

  /**
   * The level load that stands for a frame out of plumb, where this load acts.
   *
   * @param level its global direction, of length 1
   * @param share level force per force of this load
   */
  default SegmentLoad turned(Vector level, double share) {
    LoadOrigin notional = new LoadOrigin.Notional(share, origin());
    if (this instanceof Point p) {
      return new Point(p.segment, LoadAxes.GLOBAL, level, notional, p.force * share, p.at);
    }
    Distributed d = (Distributed) this;
    return new Distributed(
        d.segment,
        LoadAxes.GLOBAL,
        level,
        notional,
        d.intensityFrom * share,
        d.intensityTo * share,
        d.from,
        d.to);
  }

  /**
   * A force at one place.
   *
   * @param force N
   * @param at distance from the segment's start, mm
   */
  record Point(
      Segment segment, LoadAxes axes, Vector direction, LoadOrigin origin, double force, double at)
      implements SegmentLoad {}

  /**
   * A load spread along a stretch, varying linearly.
   *
   * @param intensityFrom N per mm of segment length, at {@code from}
   * @param intensityTo N per mm of segment length, at {@code to}
   * @param from start of the stretch from the segment's start, mm
   * @param to end of the stretch, mm; greater than {@code from}
   */
  record Distributed(
      Segment segment,
      LoadAxes axes,
      Vector direction,
      LoadOrigin origin,
      double intensityFrom,
      double intensityTo,
      double from,
      double to)
      implements SegmentLoad {}
}
