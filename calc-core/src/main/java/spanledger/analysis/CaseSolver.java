package spanledger.analysis;

import java.util.Arrays;
import java.util.List;
import spanledger.action.LoadCase;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/** Solves load cases one after another and proves each; for one thread. */
final class CaseSolver {

  /** Moments below this share of all loads are rounding. */
  private static final double ROUNDING = 1e-9;

  private final FrameAnalysis analysis;
  private final Holds holds;
  private final List<Node> nodes;
  private final Vector middle;
  private final double reach;
  private final double[] work;
  private final double[] taken;
  private final double[] left;
  private final double[] correction;
  private final double[] ofSegment = new double[SegmentModel.ENDS];
  private final double[] atNodes = new double[SegmentModel.ENDS];
  private final double[] deformations = new double[SegmentModel.DEFORMATIONS];

  CaseSolver(FrameAnalysis analysis) {
    this.analysis = analysis;
    this.holds = analysis.holds();
    this.nodes = analysis.frame().nodes();
    Vector sum = Vector.ZERO;
    for (Node node : nodes) {
      sum = sum.plus(node.place());
    }
    middle = sum.times(1.0 / Math.max(1, nodes.size()));
    double farthest = 0;
    for (Node node : nodes) {
      farthest = Math.max(farthest, node.place().minus(middle).norm());
    }
    reach = farthest;
    work = new double[analysis.unknowns()];
    taken = new double[6 * nodes.size()];
    left = new double[taken.length];
    correction = new double[taken.length];
  }

  CaseResult solve(LoadCase loadCase) {
    AppliedLoads loads = new AppliedLoads(analysis, loadCase, middle, reach);
    requireNoMomentOnIdleTurns(loadCase, loads);
    double[] movements = new double[taken.length];
    double[] endForces = new double[SegmentModel.ENDS * analysis.models().size()];
    analysis.solve(loads.onNodes(), movements, work);
    balance(loads, movements, endForces);
    // One round of correction: what rounding left out of balance is solved for again.
    analysis.solve(left, correction, work);
    for (int i = 0; i < movements.length; i++) {
      movements[i] += correction[i];
    }
    balance(loads, movements, endForces);
    double[] reactions = reactions(loads, movements);
    return new CaseResult(
        analysis, loadCase, loads, movements, endForces, reactions, proof(loads, reactions));
  }

  /** End forces from movements, and what is then left over at each freedom that may move. */
  private void balance(AppliedLoads loads, double[] movements, double[] endForces) {
    Arrays.fill(taken, 0);
    for (SegmentModel model : analysis.models()) {
      int[] ends = analysis.ends(model.segment());
      SegmentModel.gather(movements, ends[0], ends[1], atNodes);
      model.deformations(atNodes, deformations);
      model.endForces(deformations, ofSegment);
      int s = model.segment().index();
      if (loads.loadMoments(s).length > 0) {
        model.addFixedEndForces(loads.loadMoments(s), 1, ofSegment);
      }
      System.arraycopy(ofSegment, 0, endForces, SegmentModel.ENDS * s, SegmentModel.ENDS);
      model.nodeForces(ofSegment, atNodes);
      for (int i = 0; i < 6; i++) {
        taken[6 * ends[0] + i] += atNodes[i];
        taken[6 * ends[1] + i] += atNodes[6 + i];
      }
    }
    for (int i = 0; i < left.length; i++) {
      left[i] =
          holds.isFixed(i) ? 0 : loads.direct()[i] - taken[i] - holds.spring(i) * movements[i];
    }
  }

  private double[] reactions(AppliedLoads loads, double[] movements) {
    double[] reactions = new double[taken.length];
    for (int i = 0; i < reactions.length; i++) {
      reactions[i] =
          holds.isFixed(i) ? taken[i] - loads.direct()[i] : -holds.spring(i) * movements[i];
    }
    return reactions;
  }

  private Equilibrium proof(AppliedLoads loads, double[] reactions) {
    double nodeForce = 0;
    double nodeMoment = 0;
    Vector force = loads.force();
    Vector moment = loads.moment();
    for (int n = 0; n < nodes.size(); n++) {
      nodeForce = Math.max(nodeForce, vector(left, 6 * n).norm());
      nodeMoment = Math.max(nodeMoment, vector(left, 6 * n + 3).norm());
      if (holds.isSupported(n)) {
        Vector reaction = vector(reactions, 6 * n);
        force = force.plus(reaction);
        moment =
            moment
                .plus(nodes.get(n).place().minus(middle).cross(reaction))
                .plus(vector(reactions, 6 * n + 3));
      }
    }
    return new Equilibrium(
        nodeForce, nodeMoment, force, moment, loads.forceScale(), loads.momentScale());
  }

  private void requireNoMomentOnIdleTurns(LoadCase loadCase, AppliedLoads loads) {
    for (IdleTurn idle : analysis.idleFreedoms()) {
      Vector moment = vector(loads.onNodes(), 6 * analysis.frame().indexOf(idle.node()) + 3);
      double about = moment.dot(idle.axis());
      if (Math.abs(about) > ROUNDING * loads.momentScale()) {
        Freedom freedom = nearest(idle.axis());
        throw new MechanismException(
            idle.node(),
            freedom,
            "Node "
                + idle.node().name()
                + " can turn "
                + freedom.words()
                + " under case "
                + loadCase.name()
                + ": a moment of "
                + Math.round(Math.abs(about))
                + " N·mm acts on it, but every member end there is pinned. Make one of them rigid.");
      }
    }
  }

  private static Freedom nearest(Vector axis) {
    double x = Math.abs(axis.x());
    double y = Math.abs(axis.y());
    double z = Math.abs(axis.z());
    if (x >= y && x >= z) {
      return Freedom.TURN_X;
    }
    return y >= z ? Freedom.TURN_Y : Freedom.TURN_Z;
  }

  private static Vector vector(double[] of, int at) {
    return new Vector(of[at], of[at + 1], of[at + 2]);
  }
}
