package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * Segments end to end along which a load may stand.
 *
 * @param name what it is called where one segment is not enough to say it
 * @param lanes the segments in order along the path, at least one
 */
public record LoadPath(String name, List<Lane> lanes) {

  /**
   * How far from the ends of a segment a load stands that is meant for the very end, mm. On the end
   * itself it would go straight into the node and leave no shear in the segment; just beside it, it
   * leaves all of it.
   */
  public static final double JUST_BESIDE = 1e-6;

  public LoadPath {
    lanes = List.copyOf(lanes);
    if (lanes.isEmpty()) {
      throw new IllegalArgumentException("Path " + name + " has no segment.");
    }
  }

  /**
   * A segment of the path.
   *
   * @param segment the segment
   * @param direction the direction in which the load acts there, global, of length 1
   * @param forward whether the path runs from the segment's start to its end
   */
  public record Lane(Segment segment, Vector direction, boolean forward) {

    /** A lane that runs as its segment does. */
    public Lane(Segment segment, Vector direction) {
      this(segment, direction, true);
    }

    /**
     * The place on the segment.
     *
     * @param along from where the path enters the segment, mm
     * @return mm from the segment's start, just beside its ends at most
     */
    public double on(double along) {
      double x = forward ? along : segment.length() - along;
      return Math.max(JUST_BESIDE, Math.min(x, segment.length() - JUST_BESIDE));
    }
  }

  /** The path of one segment alone. */
  public static LoadPath of(Segment segment, Vector direction) {
    return new LoadPath(segment.name(), List.of(new Lane(segment, direction)));
  }

  /** Where each lane begins, mm along the path, and the length of the whole at the end. */
  public double[] marks() {
    double[] marks = new double[lanes.size() + 1];
    for (int i = 0; i < lanes.size(); i++) {
      marks[i + 1] = marks[i] + lanes.get(i).segment().length();
    }
    return marks;
  }

  /** The length, mm. */
  public double length() {
    double[] marks = marks();
    return marks[marks.length - 1];
  }

  /** The loads of a footprint where it stands; see {@link MovingLoad#placed}. */
  List<SegmentLoad> placed(Footprint footprint, double at, String figureId, double force) {
    List<SegmentLoad> loads = new ArrayList<>();
    if (footprint instanceof Footprint.Patch patch) {
      addPatch(loads, patch, at, figureId, force);
    } else {
      int number = footprint instanceof Footprint.Train train ? train.number() : 1;
      double spacing = footprint instanceof Footprint.Train train ? train.spacing() : 0;
      for (int i = 0; i < number; i++) {
        addPoint(loads, at - i * spacing, figureId, force);
      }
    }
    return loads;
  }

  private void addPoint(List<SegmentLoad> loads, double at, String figureId, double force) {
    double[] marks = marks();
    int lane = laneAt(marks, at);
    if (lane >= 0) {
      Lane on = lanes.get(lane);
      loads.add(
          new SegmentLoad.Point(
              on.segment(),
              LoadAxes.GLOBAL,
              on.direction(),
              new LoadOrigin.Given(figureId),
              force,
              on.on(at - marks[lane])));
    }
  }

  /** The lane that a place is on, the later one where two meet; -1 beyond the ends. */
  private int laneAt(double[] marks, double at) {
    double length = marks[marks.length - 1];
    if (at < -JUST_BESIDE / 2 || at > length + JUST_BESIDE / 2) {
      return -1;
    }
    int lane = 0;
    while (lane + 1 < lanes.size() && marks[lane + 1] <= at) {
      lane++;
    }
    return lane;
  }

  private void addPatch(
      List<SegmentLoad> loads, Footprint.Patch patch, double at, String figureId, double force) {
    double[] marks = marks();
    double spread = Math.min(patch.length(), marks[marks.length - 1]);
    double from = at - spread / 2;
    double to = at + spread / 2;
    double intensity = PatchLoad.intensity(force, spread);
    LoadOrigin origin = new LoadOrigin.Patch(figureId, spread);
    for (int i = 0; i < lanes.size(); i++) {
      Lane lane = lanes.get(i);
      double length = lane.segment().length();
      double enters = Math.max(0, from - marks[i]);
      double leaves = Math.min(length, to - marks[i]);
      if (leaves - enters > JUST_BESIDE) {
        double start = lane.forward() ? enters : length - leaves;
        double end = lane.forward() ? leaves : length - enters;
        loads.add(
            new SegmentLoad.Distributed(
                lane.segment(),
                LoadAxes.GLOBAL,
                lane.direction(),
                origin,
                intensity,
                intensity,
                start,
                end));
      }
    }
  }

  /** The lane under a place, for words; the last one beyond the end. */
  Lane under(double at) {
    double[] marks = marks();
    int lane = laneAt(marks, Math.max(0, Math.min(at, marks[marks.length - 1])));
    return lanes.get(Math.max(0, lane));
  }
}
