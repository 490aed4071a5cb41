package spanledger.envelope;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import spanledger.action.Footprint;
import spanledger.action.LoadPath;
import spanledger.action.MovingLoad;
import spanledger.analysis.SegmentInfluence;
import spanledger.frame.Segment;

/**
 * A stretch of a load path on which every part of a moving load stays on one segment, so that what
 * it does to segments it does not stand on is a polynomial of at most the fourth degree in its
 * place: fixed-end forces of a point are of the third, of a patch that leaves a segment of the
 * fourth.
 */
final class Stretch {

  private final MovingLoad load;
  private final LoadPath path;
  private final double from;
  private final double to;
  private final double[] marks;
  private final double[] parts;
  private final List<List<SegmentInfluence.Placed>> samples = new ArrayList<>();
  private final BitSet touched = new BitSet();

  private Stretch(MovingLoad load, LoadPath path, double from, double to, Responses responses) {
    this.load = load;
    this.path = path;
    this.from = from;
    this.to = to;
    this.marks = path.marks();
    this.parts = parts(load, path);
    for (int i = 0; i < Quartic.SAMPLES; i++) {
      List<SegmentInfluence.Placed> sample = responses.place(load.placed(path, at(i)));
      samples.add(sample);
      sample.forEach(part -> touched.set(part.influence().segment().index()));
    }
  }

  /**
   * All stretches of a load, path by path.
   *
   * @param places how many places of each stretch are to be looked at, at least
   */
  static List<Stretch> of(MovingLoad load, Responses responses, int places) {
    int pieces = Math.max(1, (places + Quartic.SAMPLES - 2) / (Quartic.SAMPLES - 1));
    List<Stretch> all = new ArrayList<>();
    for (LoadPath path : load.paths()) {
      double start = load.first(path);
      double end = load.last(path);
      TreeSet<Double> breaks = new TreeSet<>(List.of(start, end));
      for (double mark : path.marks()) {
        for (double part : parts(load, path)) {
          double at = mark + part;
          if (at > start + 1 && at < end - 1) {
            breaks.add(at);
          }
        }
      }
      double before = start;
      for (double at : breaks) {
        if (at > before) {
          for (int i = 0; i < pieces; i++) {
            double from = before + (at - before) * i / pieces;
            double to = before + (at - before) * (i + 1) / pieces;
            all.add(new Stretch(load, path, from, to, responses));
          }
          before = at;
        }
      }
      if (end == start) {
        all.add(new Stretch(load, path, start, end, responses));
      }
    }
    return all;
  }

  /** Where its parts are behind the place of the load, or the edges of a patch beside it, mm. */
  private static double[] parts(MovingLoad load, LoadPath path) {
    if (load.footprint() instanceof Footprint.Train train) {
      double[] behind = new double[train.number()];
      for (int i = 0; i < behind.length; i++) {
        behind[i] = i * train.spacing();
      }
      return behind;
    }
    double half = load.first(path);
    return half == 0 ? new double[] {0} : new double[] {-half, half};
  }

  MovingLoad load() {
    return load;
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  /** The place of a sample, mm along the path; the first and last are the ends of the stretch. */
  double at(int sample) {
    // At its end the load is just before it: beyond it, it may be on another segment.
    return Math.min(from + (to - from) * Quartic.place(sample), to - LoadPath.JUST_BESIDE);
  }

  /** What stands on the segments at a sample. */
  List<SegmentInfluence.Placed> sample(int i) {
    return samples.get(i);
  }

  /** Whether the load stands on a segment, somewhere on the stretch. */
  boolean touches(Segment segment) {
    return touched.get(segment.index());
  }

  /** Adds the indices of all segments that the load stands on, somewhere on the stretch. */
  void addTouched(BitSet into) {
    into.or(touched);
  }

  /**
   * The places at which a part of the load, or an edge of a patch, passes a place of a segment, in
   * order, with both ends of the stretch.
   */
  double[] crossings(Segment segment, double x) {
    DoubleStream.Builder found = DoubleStream.builder().add(from).add(to);
    for (int i = 0; i < path.lanes().size(); i++) {
      LoadPath.Lane lane = path.lanes().get(i);
      if (lane.segment().index() == segment.index()) {
        double along = marks[i] + (lane.forward() ? x : segment.length() - x);
        for (double part : parts) {
          double at = along + part;
          if (at > from && at < to) {
            found.add(at);
          }
        }
      }
    }
    return found.build().sorted().distinct().toArray();
  }

  /** The load standing at a place of the stretch. */
  Standing standing(double at) {
    return new Standing(load, path, Math.min(at, Math.max(from, to - LoadPath.JUST_BESIDE)));
  }
}
