package spanledger.analysis;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.LoadCase;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/**
 * What one load case does to the frame. Immutable; arrays handed out are copies, in the orders that
 * {@link SegmentModel} states.
 */
public final class CaseResult {

  private final FrameAnalysis analysis;
  private final LoadCase loadCase;
  private final AppliedLoads loads;
  private final double[] movements;
  private final double[] endForces;
  private final double[] reactions;
  private final Equilibrium equilibrium;

  CaseResult(
      FrameAnalysis analysis,
      LoadCase loadCase,
      AppliedLoads loads,
      double[] movements,
      double[] endForces,
      double[] reactions,
      Equilibrium equilibrium) {
    this.analysis = analysis;
    this.loadCase = loadCase;
    this.loads = loads;
    this.movements = movements;
    this.endForces = endForces;
    this.reactions = reactions;
    this.equilibrium = equilibrium;
  }

  /** The load case. */
  public LoadCase loadCase() {
    return loadCase;
  }

  /** What it does along a segment. */
  public SegmentResponse response(Segment segment) {
    return SegmentResponse.of(analysis, this, segment);
  }

  /** How a node moves in one freedom; mm or rad, global axes. */
  public double movement(Node node, Freedom freedom) {
    return movements[6 * analysis.frame().indexOf(node) + freedom.ordinal()];
  }

  /** The shift of a node, mm, global axes. */
  public Vector shift(Node node) {
    return vector(movements, 6 * analysis.frame().indexOf(node));
  }

  /** The turn of a node, rad, global axes. */
  public Vector turn(Node node) {
    return vector(movements, 6 * analysis.frame().indexOf(node) + 3);
  }

  /** The 12 movements of a segment's nodes. */
  public double[] movements(Segment segment) {
    double[] both = new double[SegmentModel.ENDS];
    int[] ends = analysis.ends(segment);
    SegmentModel.gather(movements, ends[0], ends[1], both);
    return both;
  }

  /** The 6 basic deformations of a segment. */
  public double[] deformations(Segment segment) {
    double[] deformations = new double[SegmentModel.DEFORMATIONS];
    analysis.model(segment).deformations(movements(segment), deformations);
    return deformations;
  }

  /** The 12 forces on the ends of a segment, N and N·mm, in its axes. */
  public double[] endForces(Segment segment) {
    double[] own = new double[SegmentModel.ENDS];
    System.arraycopy(endForces, SegmentModel.ENDS * segment.index(), own, 0, own.length);
    return own;
  }

  /** The 12 forces that a segment takes from its nodes, N and N·mm, global axes. */
  public double[] nodeForces(Segment segment) {
    double[] forces = new double[SegmentModel.ENDS];
    analysis.model(segment).nodeForces(endForces(segment), forces);
    return forces;
  }

  /** What the support of a node does to it; all zero where there is none. */
  public Reaction reaction(Node node) {
    int at = 6 * analysis.frame().indexOf(node);
    return new Reaction(node, vector(reactions, at), vector(reactions, at + 3));
  }

  /** The reactions of all supports, in the frame's order. */
  public List<Reaction> reactions() {
    List<Reaction> all = new ArrayList<>();
    for (Support support : analysis.frame().supports()) {
      all.add(reaction(support.node()));
    }
    return List.copyOf(all);
  }

  /** How well the forces balance. */
  public Equilibrium equilibrium() {
    return equilibrium;
  }

  /**
   * Adds this result, times a factor, to others.
   *
   * @param ofNodes six per node, added to
   * @param ofSegments twelve per segment, added to
   */
  public void addTo(double factor, double[] ofNodes, double[] ofSegments) {
    for (int i = 0; i < movements.length; i++) {
      ofNodes[i] += factor * movements[i];
    }
    for (int i = 0; i < endForces.length; i++) {
      ofSegments[i] += factor * endForces[i];
    }
  }

  AppliedLoads loads() {
    return loads;
  }

  /** All movements, six per node; not to be modified. */
  double[] allMovements() {
    return movements;
  }

  /** All end forces, twelve per segment; not to be modified. */
  double[] allEndForces() {
    return endForces;
  }

  private static Vector vector(double[] of, int at) {
    return new Vector(of[at], of[at + 1], of[at + 2]);
  }
}
