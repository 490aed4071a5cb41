package spanledger.state;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spanledger.action.LoadCase;
import spanledger.frame.Frame;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.sparse.BlockFactor;
import spanledger.sparse.BlockMatrix;
import spanledger.stability.CriticalFactor;
import spanledger.stability.CriticalLoad;
import spanledger.stability.FrameStiffness;
import spanledger.stability.ModeNaming;

/**
 * Solves states of a frame: loads at fixed places, joints with play and holds that act one way, in
 * first or second order. Results do not depend on the order in which states are asked for. Not for
 * several threads at once.
 *
 * <p>Second order: equilibrium of the moved frame with small turns; members bent and softened by
 * their mean axial force (exact stability functions, loads between nodes included); the change of
 * length by bowing is left out. See docs/theory/second-order.md.
 */
public final class StateAnalysis {

  /** Added to soft matrices, per own stiffness, to see how a frame without hold moves. */
  private static final double STIFFENING = 1e-9;

  /** Less than this share of its own stiffness left, and a freedom counts as free. */
  private static final double LEAST_PIVOT_RATIO = 1e-11;

  private static final int MOST_CHANGES = 1000;

  /** Cases kept ready; sweeps over places make new ones without end. */
  private static final int MOST_PREPARED = 1024;

  private final StateOptions options;
  private final FrameStiffness stiffness;
  private final SteppedHolds holds;
  private final Map<List<Integer>, CriticalLoad> criticalLoads = new HashMap<>();
  private final IdentityHashMap<LoadCase, StateLoads> prepared = new IdentityHashMap<>();
  private final BlockMatrix matrix;
  private final BlockFactor factor;
  private final double reach;
  private @Nullable BlockFactor atRest;

  /**
   * Prepares a frame.
   *
   * @throws spanledger.analysis.MechanismException if the frame can move without resistance even
   *     when every one-way hold bears
   * @throws IllegalArgumentException if the frame is not sound, see {@link FrameStiffness}
   */
  public StateAnalysis(Frame frame, StateOptions options) {
    this(new FrameStiffness(frame), options);
  }

  /** The same on a stiffness of its own. */
  public StateAnalysis(FrameStiffness stiffness, StateOptions options) {
    this.stiffness = stiffness;
    this.options = options;
    holds = new SteppedHolds(stiffness);
    matrix = new BlockMatrix(stiffness.structure());
    factor = new BlockFactor(stiffness.structure());
    reach = reach(stiffness.frame());
  }

  private static double reach(Frame frame) {
    Vector sum = Vector.ZERO;
    for (Node node : frame.nodes()) {
      sum = sum.plus(node.place());
    }
    Vector middle = sum.times(1.0 / Math.max(1, frame.nodes().size()));
    double farthest = 0;
    for (Node node : frame.nodes()) {
      farthest = Math.max(farthest, node.place().minus(middle).norm());
    }
    return farthest;
  }

  /** The frame. */
  public Frame frame() {
    return stiffness.frame();
  }

  /** How states are solved. */
  public StateOptions options() {
    return options;
  }

  /**
   * Solves a state.
   *
   * @throws IllegalArgumentException if a load lies outside its segment or is not finite
   */
  public StateOutcome solve(LoadState state) {
    return solve(state, options.secondOrder());
  }

  /**
   * Solves a state in first order, whatever the options say; enough for {@link #critical}, which
   * also gives factors below 1.
   */
  public StateOutcome solveFirstOrder(LoadState state) {
    return solve(state, false);
  }

  private StateOutcome solve(LoadState state, boolean second) {
    StateLoads loads = loads(state);
    holds.reset();
    Equilibrating rounds = new Equilibrating(stiffness, holds, matrix, factor, loads, reach);
    // What lifts and what slips is found in first order, where a softest set is safe to pass
    // through; second order starts from there.
    boolean secondOrder = false;
    boolean changed = false;
    if (second && holds.isEmpty()) {
      // Nothing can lift or slip: the first order is the sum of that of the cases.
      rounds.startFrom(firstOrder(state));
      secondOrder = true;
    }
    for (int change = 0; change < MOST_CHANGES; change++) {
      Equilibrating.End end = rounds.run(secondOrder, options);
      if (end == Equilibrating.End.UNSTABLE && (secondOrder || holds.isEmpty())) {
        return unstable(state, rounds, secondOrder);
      }
      if (end == Equilibrating.End.NOT_CONVERGED) {
        return notConverged(state, rounds, "equilibrium was not reached");
      }
      boolean soft = end == Equilibrating.End.UNSTABLE;
      if (soft) {
        rounds.runStiffened(STIFFENING);
      }
      SteppedHolds.Change made =
          holds.change(rounds.slackMovement(), rounds.slackForce(soft ? 1e-6 : 1e-9));
      if (made == SteppedHolds.Change.ENDLESS) {
        return notConverged(state, rounds, "one-way holds open and close without end");
      }
      if (made == SteppedHolds.Change.NONE) {
        if (soft) {
          return unstable(state, rounds, secondOrder);
        }
        if (secondOrder == second) {
          if (changed) {
            rounds.refreshFirstOrderForces(options);
          }
          return new StateOutcome.Solved(rounds.result(state, secondOrder, holds.reports()));
        }
        secondOrder = true;
        holds.nextPhase();
      } else {
        changed |= secondOrder;
      }
    }
    return notConverged(state, rounds, "one-way holds did not settle");
  }

  /**
   * The factor on the axial forces of a solved state at which the frame buckles, its joints and
   * supports staying as they are in that state.
   *
   * @param limit factors beyond this do not matter
   */
  public CriticalFactor critical(StateResult result, double limit) {
    holds.restore(result.branches());
    CriticalLoad search =
        criticalLoads.computeIfAbsent(result.branches(), b -> new CriticalLoad(stiffness));
    return search.lowest(result.firstOrderForces(), limit);
  }

  private StateLoads loads(LoadState state) {
    StateLoads loads = StateLoads.none(stiffness);
    for (LoadState.Part part : state.parts()) {
      loads.add(prepared(part.loads()), part.factor());
    }
    return loads;
  }

  private StateLoads prepared(LoadCase loads) {
    if (prepared.size() >= MOST_PREPARED && !prepared.containsKey(loads)) {
      prepared.clear();
    }
    return prepared.computeIfAbsent(loads, c -> StateLoads.of(stiffness, c));
  }

  /** Movements of the first order, case by case; only for frames without stepped holds. */
  private double[] firstOrder(LoadState state) {
    BlockFactor factorAtRest = atRest;
    if (factorAtRest == null) {
      factorAtRest = new BlockFactor(stiffness.structure());
      stiffness.assemble(new double[stiffness.bars()], 0, matrix);
      factorAtRest.factor(matrix);
      atRest = factorAtRest;
    }
    double[] sum = new double[stiffness.size()];
    for (LoadState.Part part : state.parts()) {
      double[] own = prepared(part.loads()).firstOrder(stiffness, factorAtRest);
      for (int i = 0; i < sum.length; i++) {
        sum[i] += part.factor() * own[i];
      }
    }
    return sum;
  }

  private StateOutcome unstable(LoadState state, Equilibrating rounds, boolean secondOrder) {
    double[] mode = rounds.softest();
    var named = new ModeNaming(stiffness).named(mode);
    String words =
        secondOrder
            ? "The frame buckles under "
                + state.name()
                + ": its loads exceed the elastic critical load; "
                + named.words()
                + "."
            : "Nothing holds the frame under " + state.name() + ": " + named.words() + ".";
    return new StateOutcome.Unstable(state, named, holds.reports(), words);
  }

  private StateOutcome notConverged(LoadState state, Equilibrating rounds, String why) {
    return new StateOutcome.NotConverged(
        state,
        holds.reports(),
        rounds.residual(),
        "No solution was found for " + state.name() + ": " + why + ". Do not use this state.");
  }

  static double leastPivotRatio() {
    return LEAST_PIVOT_RATIO;
  }
}
