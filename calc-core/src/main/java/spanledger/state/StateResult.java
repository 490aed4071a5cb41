package spanledger.state;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spanledger.analysis.BarLoad;
import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.BeamColumnResponse;
import spanledger.analysis.Reaction;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.stability.FrameStiffness;

/** A solved state: movements, forces and what every hold does. Immutable. */
public final class StateResult {

  /** Arrays of a solution, kept. */
  static final class Numbers {
    private final double[] movements;
    private final double[] meanForces;
    private final double[] firstOrderForces;
    private final double[] endForces;
    private final double[] supportForces;

    Numbers(
        double[] movements,
        double[] meanForces,
        double[] firstOrderForces,
        double[] endForces,
        double[] supportForces) {
      this.movements = movements;
      this.meanForces = meanForces;
      this.firstOrderForces = firstOrderForces;
      this.endForces = endForces;
      this.supportForces = supportForces;
    }
  }

  /**
   * What it took, and how well forces balance.
   *
   * @param rounds of equilibrium
   * @param factorisations of the stiffness
   * @param residual the worst force left over at a node, or moment per longest segment there, per
   *     sum of all loads
   */
  public record Effort(int rounds, int factorisations, double residual) {}

  private final FrameStiffness stiffness;
  private final LoadState state;
  private final StateLoads loads;
  private final boolean secondOrder;
  private final Numbers numbers;
  private final List<HoldReport> holds;
  private final List<Integer> branches;
  private final Effort effort;

  StateResult(
      FrameStiffness stiffness,
      LoadState state,
      StateLoads loads,
      boolean secondOrder,
      Numbers numbers,
      List<HoldReport> holds,
      List<Integer> branches,
      Effort effort) {
    this.stiffness = stiffness;
    this.state = state;
    this.loads = loads;
    this.secondOrder = secondOrder;
    this.numbers = numbers;
    this.holds = List.copyOf(holds);
    this.branches = List.copyOf(branches);
    this.effort = effort;
  }

  /** The state. */
  public LoadState state() {
    return state;
  }

  /** Whether it was solved in second order. */
  public boolean isSecondOrder() {
    return secondOrder;
  }

  /** What holds with play, or that act one way, do; in the frame's order, supports first. */
  public List<HoldReport> holds() {
    return holds;
  }

  /** What it took. */
  public Effort effort() {
    return effort;
  }

  /** How a node moves in one freedom; mm or rad, global axes. */
  public double movement(Node node, Freedom freedom) {
    return numbers.movements[6 * stiffness.frame().indexOf(node) + freedom.ordinal()];
  }

  /** The shift of a node, mm, global axes. */
  public Vector shift(Node node) {
    return vector(numbers.movements, 6 * stiffness.frame().indexOf(node));
  }

  /** The turn of a node, rad, global axes. */
  public Vector turn(Node node) {
    return vector(numbers.movements, 6 * stiffness.frame().indexOf(node) + 3);
  }

  /** The 12 movements of a segment's nodes. */
  public double[] movements(Segment segment) {
    double[] both = new double[SegmentModel.ENDS];
    stiffness.gather(numbers.movements, segment.index(), both);
    return both;
  }

  /** All movements, six per node. */
  public double[] movements() {
    return numbers.movements.clone();
  }

  /**
   * The 12 forces on the ends of a segment, N and N·mm, along the axes that it has at rest. With
   * second order their sum balances on the moved bar.
   */
  public double[] endForces(Segment segment) {
    int from = SegmentModel.ENDS * segment.index();
    return Arrays.copyOfRange(numbers.endForces, from, from + SegmentModel.ENDS);
  }

  /**
   * The mean axial force of a segment, N, tension positive; what its bending is worked out with.
   */
  public double axialForce(Segment segment) {
    return numbers.meanForces[segment.index()];
  }

  /** What the support of a node does to it; all zero where there is none. */
  public Reaction reaction(Node node) {
    int at = 6 * stiffness.frame().indexOf(node);
    return new Reaction(
        node, vector(numbers.supportForces, at), vector(numbers.supportForces, at + 3));
  }

  /** The reactions of all supports, in the frame's order. */
  public List<Reaction> reactions() {
    List<Reaction> all = new ArrayList<>();
    for (Support support : stiffness.frame().supports()) {
      all.add(reaction(support.node()));
    }
    return List.copyOf(all);
  }

  double[] firstOrderForces() {
    return numbers.firstOrderForces;
  }

  /** All loads on a segment with their factors, in its axes; those on one stretch are added up. */
  public List<BarLoad> loadsOn(Segment segment) {
    StateLoads.Loaded loaded = loads.bySegment().get(segment.index());
    return loaded == null ? List.of() : List.copyOf(loaded.loads());
  }

  /** The load moments of a segment, as in {@link SegmentModel#LOAD_MOMENTS}; a new array. */
  public double[] loadMoments(Segment segment) {
    StateLoads.Loaded loaded = loads.bySegment().get(segment.index());
    return loaded == null ? new double[SegmentModel.LOAD_MOMENTS] : loaded.moments().clone();
  }

  /** All loads on nodes with their factors, six per node, N and N·mm, global axes; a new array. */
  public double[] nodeLoads() {
    return loads.onNodes().clone();
  }

  /** What the state does along a segment. */
  public BeamColumnResponse response(Segment segment) {
    int s = segment.index();
    BeamColumnModel bar = new BeamColumnModel(stiffness.bar(s).model());
    bar.setForce(secondOrder ? numbers.meanForces[s] : 0);
    StateLoads.Loaded loaded = loads.bySegment().get(s);
    return new BeamColumnResponse(
        bar,
        numbers.meanForces[s],
        endForces(segment),
        loaded == null ? List.of() : loaded.loads(),
        loaded == null ? new double[SegmentModel.LOAD_MOMENTS] : loaded.moments());
  }

  List<Integer> branches() {
    return branches;
  }

  private static Vector vector(double[] of, int at) {
    return new Vector(of[at], of[at + 1], of[at + 2]);
  }
}
