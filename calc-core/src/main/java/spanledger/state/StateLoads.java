package spanledger.state;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.BarLoad;
import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.LocalLoad;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Vector;
import spanledger.sparse.BlockFactor;
import spanledger.stability.FrameStiffness;

/** All loads of one state: on nodes, and by segment in the segment's axes. */
final class StateLoads {

  private final double[] onNodes;
  private final Map<Integer, Loaded> bySegment = new TreeMap<>();
  private double forceScale;
  private double momentScale;
  private double @Nullable [] firstOrder;

  /** What acts on one segment. */
  static final class Loaded {
    private final List<BarLoad> loads = new ArrayList<>();
    private final double[] moments = new double[SegmentModel.LOAD_MOMENTS];

    List<BarLoad> loads() {
      return loads;
    }

    double[] moments() {
      return moments;
    }

    private void add(BarLoad load) {
      for (int i = 0; i < loads.size(); i++) {
        if (loads.get(i).isOn(load)) {
          loads.set(i, loads.get(i).plus(load));
          return;
        }
      }
      loads.add(load);
    }
  }

  private StateLoads(int size) {
    onNodes = new double[size];
  }

  /**
   * The movements that these loads cause in first order, worked out once.
   *
   * @param factor of the frame's stiffness at rest
   */
  double[] firstOrder(FrameStiffness stiffness, BlockFactor factor) {
    double[] found = firstOrder;
    if (found == null) {
      found = onNodes.clone();
      double[] turns = new double[4];
      double[] room = BarLoad.room();
      double[] still = new double[SegmentModel.ENDS];
      double[] ends = new double[SegmentModel.ENDS];
      double[] atNodes = new double[SegmentModel.ENDS];
      for (Map.Entry<Integer, Loaded> entry : bySegment.entrySet()) {
        int s = entry.getKey();
        BeamColumnModel bar = stiffness.bar(s);
        bar.setForce(0);
        Arrays.fill(turns, 0);
        for (BarLoad load : entry.getValue().loads()) {
          load.addTurns(bar.model().length(), 0, 0, room, turns);
        }
        bar.endForces(still, 0, turns, entry.getValue().moments(), ends);
        bar.nodeForces(ends, still, atNodes);
        for (int i = 0; i < 6; i++) {
          found[6 * stiffness.firstNode(s) + i] -= atNodes[i];
          found[6 * stiffness.secondNode(s) + i] -= atNodes[6 + i];
        }
      }
      for (int i = 0; i < found.length; i++) {
        found[i] = stiffness.isFixed(i) ? 0 : found[i];
      }
      factor.solve(found);
      firstOrder = found;
    }
    return found;
  }

  /** Nothing. */
  static StateLoads none(FrameStiffness stiffness) {
    return new StateLoads(stiffness.size());
  }

  /** One case. */
  static StateLoads of(FrameStiffness stiffness, LoadCase loadCase) {
    StateLoads made = new StateLoads(stiffness.size());
    for (NodalLoad load : loadCase.nodalLoads()) {
      int at = 6 * stiffness.frame().indexOf(load.node());
      double size = load.force().norm() + load.moment().norm();
      if (!Double.isFinite(size)) {
        throw new IllegalArgumentException(
            "The load on node " + load.node().name() + " is not a finite number.");
      }
      add(made.onNodes, at, load.force());
      add(made.onNodes, at + 3, load.moment());
      made.forceScale += load.force().norm();
      made.momentScale += load.moment().norm();
    }
    for (SegmentLoad load : loadCase.segmentLoads()) {
      SegmentModel model = stiffness.bar(load.segment().index()).model();
      LocalLoad local = new LocalLoad(load, model);
      Loaded loaded = made.bySegment.computeIfAbsent(load.segment().index(), s -> new Loaded());
      loaded.add(local.inBarAxes());
      double[] own = new double[SegmentModel.LOAD_MOMENTS];
      local.addMoments(1, own);
      for (int k = 0; k < own.length; k++) {
        loaded.moments[k] += own[k];
      }
      made.forceScale += Math.sqrt(own[0] * own[0] + own[2] * own[2] + own[6] * own[6]);
    }
    return made;
  }

  private static void add(double[] to, int at, Vector vector) {
    to[at] += vector.x();
    to[at + 1] += vector.y();
    to[at + 2] += vector.z();
  }

  /** Adds a multiple of other loads. */
  void add(StateLoads other, double factor) {
    if (factor == 0) {
      return;
    }
    for (int i = 0; i < onNodes.length; i++) {
      onNodes[i] += factor * other.onNodes[i];
    }
    other.bySegment.forEach(
        (segment, theirs) -> {
          Loaded loaded = bySegment.computeIfAbsent(segment, s -> new Loaded());
          theirs.loads.forEach(load -> loaded.add(load.times(factor)));
          for (int k = 0; k < theirs.moments.length; k++) {
            loaded.moments[k] += factor * theirs.moments[k];
          }
        });
    forceScale += Math.abs(factor) * other.forceScale;
    momentScale += Math.abs(factor) * other.momentScale;
  }

  /** Forces and moments given on nodes, six per node. */
  double[] onNodes() {
    return onNodes;
  }

  /** By place of the segment; without those that bear no load. */
  Map<Integer, Loaded> bySegment() {
    return bySegment;
  }

  /** The sum of the sizes of all loads, N, moments with an arm of {@code reach}. */
  double forceScale(double reach) {
    return reach > 0 ? forceScale + momentScale / reach : forceScale;
  }
}
