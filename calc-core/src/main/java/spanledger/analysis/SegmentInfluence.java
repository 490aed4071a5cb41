package spanledger.analysis;

import java.util.List;
import spanledger.action.SegmentLoad;
import spanledger.frame.Segment;

/**
 * What a load anywhere on one segment does to all segments, for many places of the load. Immutable.
 *
 * <p>The load is handed to the two nodes of its segment as if they could not move; what these
 * forces do elsewhere follows from unit loads on the nodes, by superposition.
 */
public final class SegmentInfluence {

  private final FrameAnalysis analysis;
  private final SegmentModel loaded;
  private final double[][] movementByNodeLoad;
  private final double[][] endForceByNodeLoad;
  private final LoadCurve[] unloaded;

  /**
   * Prepares one segment to be loaded.
   *
   * @param first the influence of the segment's first node
   * @param second that of its second node
   * @throws IllegalArgumentException if an influence is of another node
   */
  public SegmentInfluence(
      FrameAnalysis analysis, Segment segment, NodeInfluence first, NodeInfluence second) {
    this.analysis = analysis;
    this.loaded = analysis.model(segment);
    if (!first.node().equals(segment.first()) || !second.node().equals(segment.second())) {
      throw new IllegalArgumentException(
          "Member "
              + segment.name()
              + " does not join nodes "
              + first.node().name()
              + " and "
              + second.node().name()
              + ".");
    }
    int count = analysis.models().size();
    movementByNodeLoad = new double[count][];
    endForceByNodeLoad = new double[count][];
    unloaded = new LoadCurve[count];
    for (SegmentModel model : analysis.models()) {
      int s = model.segment().index();
      movementByNodeLoad[s] = gathered(model, first, second);
      endForceByNodeLoad[s] = model.startForces(movementByNodeLoad[s]);
      unloaded[s] = LoadCurve.none(model.length());
    }
  }

  /** 12 movements of the segment's nodes by 12 unit loads. */
  private double[] gathered(SegmentModel model, NodeInfluence first, NodeInfluence second) {
    double[] matrix = new double[SegmentModel.ENDS * SegmentModel.ENDS];
    int[] ends = analysis.ends(model.segment());
    for (int load = 0; load < SegmentModel.ENDS; load++) {
      double[] movements = load < 6 ? first.movements(load) : second.movements(load - 6);
      for (int end = 0; end < 2; end++) {
        for (int i = 0; i < 6; i++) {
          matrix[(6 * end + i) * SegmentModel.ENDS + load] = movements[6 * ends[end] + i];
        }
      }
    }
    return matrix;
  }

  /** The segment that is loaded. */
  public Segment segment() {
    return loaded.segment();
  }

  /**
   * Prepares a load on the segment.
   *
   * @throws IllegalArgumentException if it is on another segment or lies beyond it
   */
  public Placed place(SegmentLoad load) {
    if (load.segment().index() != loaded.segment().index()) {
      throw new IllegalArgumentException(
          "A load on member "
              + load.segment().name()
              + " was placed on member "
              + loaded.segment().name()
              + ".");
    }
    return new Placed(new LocalLoad(load, loaded));
  }

  /** A load at one place. */
  public final class Placed {
    private final LocalLoad load;
    private final double[] fixedEndForces = new double[SegmentModel.ENDS];
    private final double[] onNodes = new double[SegmentModel.ENDS];

    private Placed(LocalLoad load) {
      this.load = load;
      double[] moments = new double[SegmentModel.LOAD_MOMENTS];
      load.addMoments(1, moments);
      loaded.addFixedEndForces(moments, 1, fixedEndForces);
      loaded.nodeForces(fixedEndForces, onNodes);
      for (int i = 0; i < onNodes.length; i++) {
        onNodes[i] = -onNodes[i];
      }
    }

    /** What the load does along any segment. */
    public SegmentResponse response(Segment target) {
      int s = target.index();
      double[] movements = product(movementByNodeLoad[s], new double[SegmentModel.ENDS]);
      double[] end = product(endForceByNodeLoad[s], new double[CutForces.FORCES]);
      if (s != loaded.segment().index()) {
        return new SegmentResponse(
            analysis.models().get(s), movements, end, unloaded[s], new LocalLoad[0], new double[0]);
      }
      for (int i = 0; i < end.length; i++) {
        end[i] += fixedEndForces[i];
      }
      return new SegmentResponse(
          loaded,
          movements,
          end,
          LoadCurve.of(List.of(load), loaded.length()),
          new LocalLoad[] {load},
          new double[] {1});
    }

    private double[] product(double[] matrix, double[] into) {
      for (int row = 0; row < into.length; row++) {
        double sum = 0;
        for (int column = 0; column < onNodes.length; column++) {
          sum += matrix[row * onNodes.length + column] * onNodes[column];
        }
        into[row] = sum;
      }
      return into;
    }
  }
}
