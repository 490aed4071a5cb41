package spanledger.action;

import java.util.List;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * A force that may stand anywhere on some segments.
 *
 * @param name unique in its job
 * @param figure the figure that gives its size, N
 * @param lanes where it may stand, each with the direction in which it acts there
 */
public record MovingLoad(String name, Figure figure, List<Lane> lanes) {

  public MovingLoad {
    lanes = List.copyOf(lanes);
  }

  /**
   * A segment on which the load may stand.
   *
   * @param segment the segment
   * @param direction the direction in which the load acts there, global, of length 1
   */
  public record Lane(Segment segment, Vector direction) {}

  /** The load standing on a lane, {@code at} mm from the segment's start. */
  public SegmentLoad.Point placed(Lane lane, double at) {
    return new SegmentLoad.Point(
        lane.segment(),
        LoadAxes.GLOBAL,
        lane.direction(),
        new LoadOrigin.Given(figure.id()),
        figure.value(),
        at);
  }
}
