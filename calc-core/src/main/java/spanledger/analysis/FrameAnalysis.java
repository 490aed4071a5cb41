package spanledger.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixSparseCSC;
import spanledger.action.LoadCase;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.sparse.MinimumDegree;

/**
 * The linear analysis of one frame: stiffness put together and factored once, for any number of
 * load cases.
 *
 * <p>First order: movements are small, members stay straight enough that their axial forces do not
 * bend them. Immutable; safe to share between threads.
 *
 * <p>Vectors over the frame have six entries per node in {@link Frame#nodes()} order, each in the
 * order of {@link Freedom}: shifts mm, turns rad, forces N, moments N·mm, global axes.
 */
public final class FrameAnalysis {

  /**
   * A freedom of which less than this share of its node's stiffness is left, once all others may
   * move, counts as free. Rounding leaves about 1e-15 of a true mechanism; a cantilever cut into
   * 1000 pieces keeps 1e-9.
   */
  static final double LEAST_PIVOT_RATIO = 1e-11;

  private final Frame frame;
  private final List<SegmentModel> models;
  private final int[][] ends;
  private final Holds holds;
  private final Equations equations;
  private final Factorisation factor;
  private final double leastPivotRatio;
  private final List<IdleTurn> idleFreedoms;

  /**
   * Puts together and factors the stiffness.
   *
   * @throws MechanismException if the frame or a part of it can move without resistance
   * @throws IllegalArgumentException if a segment has no length, a property is out of its domain or
   *     a node has two supports
   */
  public FrameAnalysis(Frame frame) {
    this.frame = frame;
    holds = new Holds(frame);
    AlikeSegments alike = new AlikeSegments();
    List<SegmentModel> made = new ArrayList<>();
    ends = new int[frame.segments().size()][];
    for (Segment segment : frame.segments()) {
      made.add(new SegmentModel(segment, alike));
      ends[segment.index()] =
          new int[] {frame.indexOf(segment.first()), frame.indexOf(segment.second())};
    }
    models = List.copyOf(made);
    NodeGraph graph = NodeGraph.of(frame);
    requireTouched(graph);
    NodeStiffness stiffness = new NodeStiffness(models, ends, frame.nodes().size());
    List<IdleTurns.Hold> idle = IdleTurns.find(stiffness, holds, frame.nodes().size());
    idleFreedoms =
        idle.stream().map(h -> new IdleTurn(frame.nodes().get(h.node()), h.axis())).toList();
    equations = new Equations(MinimumDegree.order(graph.neighbours()), holds);
    DMatrixSparseCSC upper = StiffnessAssembly.of(graph, equations, models, ends, holds, idle);
    Optional<Factorisation> solved = Factorisation.of(upper);
    leastPivotRatio = solved.isEmpty() ? 0 : leastPivotRatio(solved.get(), stiffness);
    if (solved.isEmpty() || leastPivotRatio < LEAST_PIVOT_RATIO) {
      throw new MechanismSearch(frame, equations, stiffness, models).find(upper);
    }
    factor = solved.get();
  }

  private double leastPivotRatio(Factorisation solved, NodeStiffness stiffness) {
    double least = 1;
    for (int e = 0; e < equations.count(); e++) {
      double like = stiffness.like(equations.freedom(e));
      // A freedom that only a support or a hold acts on cannot be soft.
      if (like > 0) {
        least = Math.min(least, solved.pivot(e) / like);
      }
    }
    return least;
  }

  private void requireTouched(NodeGraph graph) {
    for (int node = 0; node < graph.size(); node++) {
      if (graph.neighbours(node).length > 0) {
        continue;
      }
      for (Freedom freedom : Freedom.values()) {
        if (!holds.acts(6 * node + freedom.ordinal())) {
          Node alone = frame.nodes().get(node);
          throw new MechanismException(
              alone,
              freedom,
              "Node "
                  + alone.name()
                  + " belongs to no member and can "
                  + (freedom.isShift() ? "move " : "turn ")
                  + freedom.words()
                  + ": put it on a member, or leave it out.");
        }
      }
    }
  }

  /** The frame. */
  public Frame frame() {
    return frame;
  }

  /** The mechanics of one segment. */
  public SegmentModel model(Segment segment) {
    return models.get(segment.index());
  }

  /**
   * Turns on which no stiffness acts, for example of a node where every member end is pinned. They
   * are held at zero; a load case that puts a moment on one is refused.
   */
  public List<IdleTurn> idleFreedoms() {
    return idleFreedoms;
  }

  /** How many movements are unknown. */
  public int unknowns() {
    return equations.count();
  }

  /** How many entries the factor of the stiffness has. */
  public int factorEntries() {
    return factor.entries();
  }

  /** The least share of its node's stiffness that any freedom keeps when the others may move. */
  public double leastPivotRatio() {
    return leastPivotRatio;
  }

  /**
   * Solves load cases.
   *
   * @throws MechanismException if a case puts a moment on an idle turn
   * @throws IllegalArgumentException if a load lies outside its segment or is not finite
   */
  public FrameSolution solve(List<LoadCase> cases) {
    CaseSolver solver = new CaseSolver(this);
    return new FrameSolution(this, cases.stream().map(solver::solve).toList());
  }

  /**
   * Movements under forces on nodes, for many right-hand sides.
   *
   * @param nodeForces six per node; entries at fixed freedoms do nothing; not modified
   * @param movements six per node, overwritten
   * @param work at least {@link #unknowns()} long, overwritten
   */
  public void solve(double[] nodeForces, double[] movements, double[] work) {
    for (int e = 0; e < equations.count(); e++) {
      work[e] = nodeForces[equations.freedom(e)];
    }
    finish(movements, work);
  }

  /**
   * Movements under a unit force or moment on one node; all zero if it acts on a fixed freedom.
   *
   * @param movements six per node, overwritten
   * @param work at least {@link #unknowns()} long, overwritten
   */
  public void solveUnit(Node node, Freedom freedom, double[] movements, double[] work) {
    Arrays.fill(work, 0, equations.count(), 0);
    int equation = equations.of(6 * frame.indexOf(node) + freedom.ordinal());
    if (equation != Equations.NONE) {
      work[equation] = 1;
    }
    finish(movements, work);
  }

  private void finish(double[] movements, double[] work) {
    factor.solve(work);
    Arrays.fill(movements, 0);
    for (int e = 0; e < equations.count(); e++) {
      movements[equations.freedom(e)] = work[e];
    }
  }

  List<SegmentModel> models() {
    return models;
  }

  /** Places of the nodes of a segment. */
  int[] ends(Segment segment) {
    return ends[segment.index()];
  }

  Holds holds() {
    return holds;
  }
}
