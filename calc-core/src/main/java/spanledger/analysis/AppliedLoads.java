package spanledger.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.frame.Frame;
import spanledger.frame.Vector;

/** The loads of one case, by segment and as forces on the nodes. */
final class AppliedLoads {

  private static final List<LocalLoad> NONE = List.of();
  private static final double[] UNLOADED = new double[0];

  private final List<List<LocalLoad>> bySegment;
  private final double[][] loadMoments;
  private final double[] onNodes;
  private final double[] direct;
  private Vector force = Vector.ZERO;
  private Vector moment = Vector.ZERO;
  private double forceScale;
  private double momentScale;

  /**
   * Reads the loads.
   *
   * @param middle the point about which moments are summed
   * @param reach the distance from it to the farthest node, mm
   */
  AppliedLoads(FrameAnalysis analysis, LoadCase loadCase, Vector middle, double reach) {
    Frame frame = analysis.frame();
    bySegment = new ArrayList<>(frame.segments().size());
    loadMoments = new double[frame.segments().size()][];
    for (int s = 0; s < loadMoments.length; s++) {
      bySegment.add(NONE);
      loadMoments[s] = UNLOADED;
    }
    direct = new double[6 * frame.nodes().size()];
    for (NodalLoad load : loadCase.nodalLoads()) {
      add(frame, load, middle);
    }
    for (SegmentLoad load : loadCase.segmentLoads()) {
      add(analysis, load, middle);
    }
    if (reach > 0) {
      forceScale += momentScale / reach;
      momentScale = forceScale * reach;
    }
    onNodes = direct.clone();
    double[] endForces = new double[SegmentModel.ENDS];
    double[] nodeForces = new double[SegmentModel.ENDS];
    for (int s = 0; s < loadMoments.length; s++) {
      if (loadMoments[s].length > 0) {
        SegmentModel model = analysis.models().get(s);
        Arrays.fill(endForces, 0);
        model.addFixedEndForces(loadMoments[s], 1, endForces);
        model.nodeForces(endForces, nodeForces);
        int[] ends = analysis.ends(model.segment());
        for (int i = 0; i < 6; i++) {
          onNodes[6 * ends[0] + i] -= nodeForces[i];
          onNodes[6 * ends[1] + i] -= nodeForces[6 + i];
        }
      }
    }
  }

  private void add(Frame frame, NodalLoad load, Vector middle) {
    int at = 6 * frame.indexOf(load.node());
    double size = load.force().norm() + load.moment().norm();
    if (!Double.isFinite(size)) {
      throw new IllegalArgumentException(
          "The load on node " + load.node().name() + " is not a finite number.");
    }
    direct[at] += load.force().x();
    direct[at + 1] += load.force().y();
    direct[at + 2] += load.force().z();
    direct[at + 3] += load.moment().x();
    direct[at + 4] += load.moment().y();
    direct[at + 5] += load.moment().z();
    force = force.plus(load.force());
    moment = moment.plus(load.moment()).plus(load.node().place().minus(middle).cross(load.force()));
    forceScale += load.force().norm();
    momentScale += load.moment().norm();
  }

  private void add(FrameAnalysis analysis, SegmentLoad load, Vector middle) {
    SegmentModel model = analysis.model(load.segment());
    int s = load.segment().index();
    LocalLoad local = new LocalLoad(load, model);
    if (loadMoments[s].length == 0) {
      loadMoments[s] = new double[SegmentModel.LOAD_MOMENTS];
      bySegment.set(s, new ArrayList<>());
    }
    bySegment.get(s).add(local);
    double[] own = new double[SegmentModel.LOAD_MOMENTS];
    local.addMoments(1, own);
    for (int k = 0; k < own.length; k++) {
      loadMoments[s][k] += own[k];
    }
    // The load as a whole: its sizes along x, y, z are the moments of order 0.
    Vector size = global(model, own[0], own[2], own[6]);
    Vector first = global(model, own[1], own[3], own[7]);
    force = force.plus(size);
    moment =
        moment
            .plus(load.segment().from().minus(middle).cross(size))
            .plus(model.axisX().cross(first));
    forceScale += size.norm();
  }

  private static Vector global(SegmentModel model, double x, double y, double z) {
    return model.axisX().times(x).plus(model.axisY().times(y)).plus(model.axisZ().times(z));
  }

  List<LocalLoad> on(int segment) {
    return bySegment.get(segment);
  }

  /** Load moments of a segment; an empty array if it bears no load. */
  double[] loadMoments(int segment) {
    return loadMoments[segment];
  }

  /** Forces and moments given on nodes, six per node. */
  double[] direct() {
    return direct;
  }

  /** The same with what loaded segments hand to nodes that stay where they are. */
  double[] onNodes() {
    return onNodes;
  }

  Vector force() {
    return force;
  }

  Vector moment() {
    return moment;
  }

  double forceScale() {
    return forceScale;
  }

  double momentScale() {
    return momentScale;
  }
}
