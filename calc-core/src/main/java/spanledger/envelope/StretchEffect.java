package spanledger.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Segment;

/** What a load on one stretch of its path does to one segment that it does not stand on. */
final class StretchEffect implements SegmentGrid.Reach {

  private static final int FORCES = 6;

  private final double[] startForces = new double[Quartic.SAMPLES * FORCES];
  private final double[] high = new double[2 * FORCES];
  private final double[] low = new double[2 * FORCES];

  private final List<SegmentGrid.Reach> points = new ArrayList<>(Quartic.SAMPLES);

  /** The forces of one control point: with those of the others, they enclose all that can be. */
  private static final class Point implements SegmentGrid.Reach {
    private final double[] ends;

    Point(double[] ends) {
      this.ends = ends;
    }

    @Override
    public double high(double share, int force) {
      return ends[force] + share * (ends[FORCES + force] - ends[force]);
    }

    @Override
    public double low(double share, int force) {
      return high(share, force);
    }
  }

  StretchEffect(Stretch stretch, SegmentModel model) {
    Segment segment = model.segment();
    for (int i = 0; i < Quartic.SAMPLES; i++) {
      for (SegmentInfluence.Placed part : stretch.sample(i)) {
        part.influence().addStartForces(part.onNodes(), segment.index(), startForces, FORCES * i);
      }
    }
    double[] control = new double[startForces.length];
    Quartic.controlPoints(startForces, FORCES, control);
    Arrays.fill(high, Double.NEGATIVE_INFINITY);
    Arrays.fill(low, Double.POSITIVE_INFINITY);
    double[] forces = new double[FORCES];
    for (int j = 0; j < Quartic.SAMPLES; j++) {
      double[] ends = new double[2 * FORCES];
      points.add(new Point(ends));
      for (int end = 0; end < 2; end++) {
        model.cutForces(end * model.length(), control, FORCES * j, forces);
        System.arraycopy(forces, 0, ends, FORCES * end, FORCES);
        for (int k = 0; k < FORCES; k++) {
          high[FORCES * end + k] = Math.max(high[FORCES * end + k], forces[k]);
          low[FORCES * end + k] = Math.min(low[FORCES * end + k], forces[k]);
        }
      }
    }
  }

  /** The control points of its internal forces. */
  List<SegmentGrid.Reach> controlPoints() {
    return points;
  }

  /**
   * Forces at end 1 with the load at a place.
   *
   * @param t place per length of the stretch
   * @param into six, overwritten
   */
  void startForces(double t, double[] into) {
    Quartic.at(startForces, FORCES, t, into);
  }

  /** The greatest size of each internal force, all along and for all places. */
  void sizes(double[] into) {
    for (int k = 0; k < FORCES; k++) {
      into[k] =
          Math.max(
              Math.max(Math.abs(high[k]), Math.abs(low[k])),
              Math.max(Math.abs(high[FORCES + k]), Math.abs(low[FORCES + k])));
    }
  }

  @Override
  public double high(double share, int force) {
    return high[force] + share * (high[FORCES + force] - high[force]);
  }

  @Override
  public double low(double share, int force) {
    return low[force] + share * (low[FORCES + force] - low[force]);
  }
}
