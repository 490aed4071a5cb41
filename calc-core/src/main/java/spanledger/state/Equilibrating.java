package spanledger.state;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import spanledger.analysis.BarLoad;
import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.SegmentModel;
import spanledger.sparse.BlockFactor;
import spanledger.sparse.BlockMatrix;
import spanledger.stability.FrameStiffness;

/** Brings one state into equilibrium while its holds stay as they are. */
final class Equilibrating {

  /** How it ended. */
  enum End {
    BALANCED,
    UNSTABLE,
    NOT_CONVERGED
  }

  private static final int ENDS = SegmentModel.ENDS;

  /** A new factor is made when the last one brought less than this per round. */
  private static final double SLOW = 0.05;

  /** Rounds after which a linear solution is as good as it gets. */
  private static final int CORRECTIONS = 3;

  /** Force left over per sum of all loads, beyond which a linear frame bears nothing. */
  private static final double UNBORNE = 1e-6;

  /** Forces that differ by less than this share of the greatest leave stability as it was. */
  private static final double NEAR = 1e-3;

  private final FrameStiffness stiffness;
  private final SteppedHolds holds;
  private final BlockMatrix matrix;
  private final BlockFactor factor;
  private final StateLoads loads;
  private final double scale;
  private final double reach;
  private final double[] movements;
  private final double[] left;
  private final double[] taken;
  private final double[] supportForces;
  private final double[] forces;
  private final double[] meanForces;
  private final double[] factored;
  private final double[] firstOrderForces;
  private final double[] endForces;
  private final double[] own = new double[ENDS];
  private final double[] ends = new double[ENDS];
  private final double[] atNodes = new double[ENDS];
  private final double[] turns = new double[4];
  private final double[] room = BarLoad.room();
  private static final double[] UNLOADED = new double[SegmentModel.LOAD_MOMENTS];
  private double residual;
  private int rounds;
  private int factorisations;

  Equilibrating(
      FrameStiffness stiffness,
      SteppedHolds holds,
      BlockMatrix matrix,
      BlockFactor factor,
      StateLoads loads,
      double reach) {
    this.stiffness = stiffness;
    this.holds = holds;
    this.matrix = matrix;
    this.factor = factor;
    this.loads = loads;
    this.reach = 1e3 * reach;
    this.scale = loads.forceScale(reach);
    int size = stiffness.size();
    movements = new double[size];
    left = new double[size];
    taken = new double[size];
    supportForces = new double[size];
    forces = new double[stiffness.bars()];
    meanForces = new double[forces.length];
    factored = new double[forces.length];
    firstOrderForces = new double[forces.length];
    endForces = new double[ENDS * forces.length];
  }

  /** Rounds until forces at all nodes balance. */
  End run(boolean secondOrder, StateOptions options) {
    begin(secondOrder);
    if (!factor()) {
      return End.UNSTABLE;
    }
    double before = Double.POSITIVE_INFINITY;
    for (int round = 0; round < options.mostRounds(); round++) {
      balance(secondOrder);
      rounds++;
      if (!Double.isFinite(residual)) {
        return End.NOT_CONVERGED;
      }
      if (round > 0 && residual <= options.tolerance()) {
        return finished(secondOrder);
      }
      if (!secondOrder && round >= CORRECTIONS) {
        // Each round corrects rounding alone; what then is left over cannot be borne.
        return residual <= UNBORNE ? finished(secondOrder) : End.UNSTABLE;
      }
      if (secondOrder && round > 1 && residual > SLOW * before) {
        if (!factor()) {
          return End.UNSTABLE;
        }
      }
      before = residual;
      step();
    }
    return End.NOT_CONVERGED;
  }

  /** Takes movements of the first order as known. */
  void startFrom(double[] firstOrderMovements) {
    System.arraycopy(firstOrderMovements, 0, movements, 0, movements.length);
    readForces();
    System.arraycopy(forces, 0, firstOrderForces, 0, forces.length);
  }

  private End finished(boolean secondOrder) {
    if (greatestShift() > reach) {
      // Rounding alone holds the frame.
      return End.UNSTABLE;
    }
    holds.read(movements, supportForces);
    if (!secondOrder) {
      for (int s = 0; s < firstOrderForces.length; s++) {
        stiffness.gather(movements, s, own);
        firstOrderForces[s] = stiffness.bar(s).forceOf(own);
      }
      return End.BALANCED;
    }
    // Stability was proved under nearly the same forces.
    return isNearFactored() || factor() ? End.BALANCED : End.UNSTABLE;
  }

  private double greatestShift() {
    double most = 0;
    for (int i = 0; i < movements.length; i++) {
      most = i % 6 < 3 ? Math.max(most, Math.abs(movements[i])) : most;
    }
    return most;
  }

  private boolean isNearFactored() {
    double most = 0;
    double apart = 0;
    for (int s = 0; s < forces.length; s++) {
      most = Math.max(most, Math.abs(forces[s]));
      apart = Math.max(apart, Math.abs(forces[s] - factored[s]));
    }
    return apart <= NEAR * most;
  }

  /** Works out the forces of the first order for the holds as they are now. */
  void refreshFirstOrderForces(StateOptions options) {
    double[] keptMovements = movements.clone();
    double[] keptForces = forces.clone();
    double[] keptMeans = meanForces.clone();
    double[] keptEnds = endForces.clone();
    double[] keptSupports = supportForces.clone();
    double keptResidual = residual;
    run(false, options);
    System.arraycopy(keptMovements, 0, movements, 0, movements.length);
    System.arraycopy(keptForces, 0, forces, 0, forces.length);
    System.arraycopy(keptMeans, 0, meanForces, 0, meanForces.length);
    System.arraycopy(keptEnds, 0, endForces, 0, endForces.length);
    System.arraycopy(keptSupports, 0, supportForces, 0, supportForces.length);
    residual = keptResidual;
  }

  /** Solves once with a little stiffness added everywhere, to see what opens and what closes. */
  void runStiffened(double share) {
    begin(false);
    stiffness.assemble(forces, 0, matrix);
    stiffen(share);
    factor.factor(matrix);
    factorisations++;
    balance(false);
    step();
    balance(false);
    holds.read(movements, supportForces);
  }

  private void stiffen(double share) {
    for (int i = 0; i < movements.length; i++) {
      if (!stiffness.isFixed(i)) {
        matrix.addDiagonal(
            i / 6, i % 6, share * Math.max(stiffness.like(i), matrix.diagonal(i / 6, i % 6)));
      }
    }
  }

  /** Held freedoms stand where their supports bear; in second order from the first-order state. */
  private void begin(boolean secondOrder) {
    if (!secondOrder) {
      Arrays.fill(movements, 0);
      Arrays.fill(forces, 0);
    }
    double[] origins = holds.origins();
    for (int i = 0; i < movements.length; i++) {
      if (stiffness.isFixed(i)) {
        movements[i] = origins[i];
      }
    }
    if (secondOrder) {
      readForces();
    }
  }

  private void readForces() {
    for (int s = 0; s < forces.length; s++) {
      stiffness.gather(movements, s, own);
      forces[s] = stiffness.bar(s).forceOf(own);
    }
  }

  private boolean factor() {
    System.arraycopy(forces, 0, factored, 0, forces.length);
    stiffness.assemble(forces, 1, matrix);
    factor.factor(matrix);
    factorisations++;
    return factor.negatives() == 0
        && stiffness.buckledBetweenNodes() == 0
        && stiffness.leastPivotRatio(factor) >= StateAnalysis.leastPivotRatio();
  }

  private void step() {
    factor.solve(left);
    for (int i = 0; i < movements.length; i++) {
      if (!stiffness.isFixed(i)) {
        movements[i] += left[i];
      }
    }
  }

  /** End forces from movements, and what is then left over at each freedom that may move. */
  private void balance(boolean secondOrder) {
    Arrays.fill(taken, 0);
    Map<Integer, StateLoads.Loaded> bySegment = loads.bySegment();
    for (int s = 0; s < forces.length; s++) {
      BeamColumnModel bar = stiffness.bar(s);
      stiffness.gather(movements, s, own);
      // The force in the bar stretches it in any order; it bends it in second order only.
      double force = bar.forceOf(own);
      meanForces[s] = force;
      forces[s] = secondOrder ? force : 0;
      bar.setForce(forces[s]);
      Arrays.fill(turns, 0);
      StateLoads.Loaded loaded = bySegment.get(s);
      double[] moments = UNLOADED;
      if (loaded != null) {
        for (BarLoad load : loaded.loads()) {
          load.addTurns(
              bar.model().length(), bar.reducedForce(0), bar.reducedForce(1), room, turns);
        }
        moments = loaded.moments();
      }
      bar.endForces(own, force, turns, moments, ends);
      System.arraycopy(ends, 0, endForces, ENDS * s, ENDS);
      bar.nodeForces(ends, own, atNodes);
      int first = 6 * stiffness.firstNode(s);
      int second = 6 * stiffness.secondNode(s);
      for (int i = 0; i < 6; i++) {
        taken[first + i] += atNodes[i];
        taken[second + i] += atNodes[6 + i];
      }
    }
    double[] direct = loads.onNodes();
    double[] origins = holds.origins();
    double worst = 0;
    for (int i = 0; i < left.length; i++) {
      if (stiffness.isFixed(i)) {
        supportForces[i] = taken[i] - direct[i];
        left[i] = 0;
      } else {
        supportForces[i] = -stiffness.spring(i) * (movements[i] - origins[i]);
        left[i] = direct[i] + supportForces[i] - taken[i];
      }
    }
    for (int n = 0; n < left.length / 6; n++) {
      double force = norm(6 * n);
      double moment = norm(6 * n + 3);
      double longest = Math.max(stiffness.longest(n), 1e-300);
      worst = Math.max(worst, Math.max(force, moment / longest));
    }
    residual = worst == 0 ? 0 : worst / scale;
  }

  private double norm(int at) {
    return Math.sqrt(
        left[at] * left[at] + left[at + 1] * left[at + 1] + left[at + 2] * left[at + 2]);
  }

  double residual() {
    return residual;
  }

  /** Movements that rounding explains, mm. */
  double slackMovement() {
    double most = 0;
    for (double movement : movements) {
      most = Math.max(most, Math.abs(movement));
    }
    return 1e-9 * most;
  }

  /** Forces that rounding explains, N. */
  double slackForce(double share) {
    return share * scale;
  }

  /** How the frame moves most easily, by inverse iteration near its last stiffness. */
  double[] softest() {
    stiffen(1e-9);
    factor.factor(matrix);
    Random random = new Random(1);
    double[] mode = new double[movements.length];
    for (int i = 0; i < mode.length; i++) {
      double like = stiffness.like(i);
      mode[i] =
          stiffness.isFixed(i) || like <= 0 ? 0 : (0.5 + random.nextDouble()) / Math.sqrt(like);
    }
    for (int round = 0; round < 30; round++) {
      double norm = 0;
      for (int i = 0; i < mode.length; i++) {
        norm += stiffness.like(i) * mode[i] * mode[i];
      }
      double by = norm > 0 ? 1 / Math.sqrt(norm) : 1;
      for (int i = 0; i < mode.length; i++) {
        mode[i] *= stiffness.isFixed(i) ? 0 : stiffness.like(i) * by;
      }
      factor.solve(mode);
    }
    return mode;
  }

  StateResult result(LoadState state, boolean secondOrder, List<HoldReport> reports) {
    return new StateResult(
        stiffness,
        state,
        loads,
        secondOrder,
        new StateResult.Numbers(
            movements.clone(),
            meanForces.clone(),
            firstOrderForces.clone(),
            endForces.clone(),
            supportForces.clone()),
        reports,
        holds.branches(),
        new StateResult.Effort(rounds, factorisations, residual));
  }
}
