package spanledger.overturning;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** The loads of a case as weights and resultants. */
final class LoadForces {

  private LoadForces() {}

  /** Even loads straight down as weights along lines, all others as resultants. */
  static List<Acting> of(LoadCase loads) {
    List<Acting> acting = new ArrayList<>();
    for (NodalLoad load : loads.nodalLoads()) {
      acting.add(
          new PlacedForce(
              loads.name() + " on " + load.node().name(),
              load.force(),
              load.moment(),
              load.node().place()));
    }
    for (SegmentLoad load : loads.segmentLoads()) {
      acting.add(of(loads.name() + " on " + load.segment().name(), load));
    }
    return acting;
  }

  private static Acting of(String name, SegmentLoad load) {
    if (load instanceof SegmentLoad.Distributed spread && isEvenWeight(spread)) {
      return new LineWeight(
          name,
          at(load.segment(), spread.from()),
          at(load.segment(), spread.to()),
          spread.intensityFrom() * (spread.to() - spread.from()));
    }
    return resultant(name, load);
  }

  private static boolean isEvenWeight(SegmentLoad.Distributed load) {
    return load.axes() == LoadAxes.GLOBAL
        && load.direction().equals(Vector.DOWN)
        && load.intensityFrom() == load.intensityTo()
        && load.intensityFrom() >= 0;
  }

  /** The resultant of a load on a segment. */
  static PlacedForce resultant(String name, SegmentLoad load) {
    Vector direction = global(load);
    if (load instanceof SegmentLoad.Point point) {
      return new PlacedForce(name, direction.times(point.force()), at(load.segment(), point.at()));
    }
    SegmentLoad.Distributed spread = (SegmentLoad.Distributed) load;
    double first = spread.intensityFrom();
    double last = spread.intensityTo();
    double length = spread.to() - spread.from();
    // Force at the middle and the couple of the part that varies, so that opposite ends that sum to
    // nothing keep their moment.
    double force = (first + last) / 2 * length;
    double couple = (last - first) * length * length / 12;
    Vector along = load.segment().to().minus(load.segment().from()).unit();
    return new PlacedForce(
        name,
        direction.times(force),
        along.cross(direction).times(couple),
        at(load.segment(), (spread.from() + spread.to()) / 2));
  }

  private static Vector global(SegmentLoad load) {
    Vector d = load.direction();
    if (load.axes() == LoadAxes.GLOBAL) {
      return d;
    }
    SegmentModel model = new SegmentModel(load.segment());
    return model
        .axisX()
        .times(d.x())
        .plus(model.axisY().times(d.y()))
        .plus(model.axisZ().times(d.z()));
  }

  /** A place on a segment, mm from its start. */
  static Vector at(Segment segment, double along) {
    Vector axis = segment.to().minus(segment.from()).unit();
    return segment.from().plus(axis.times(along));
  }
}
