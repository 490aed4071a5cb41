package spanledger.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spanledger.analysis.BeamColumnModel;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.IdleTurns;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.sparse.BlockFactor;
import spanledger.sparse.BlockMatrix;
import spanledger.sparse.BlockStructure;

/**
 * The stiffness of a frame in one state of its joints and supports, under axial forces. Mutable:
 * joints and supports are set, then matrices asked for. Not for several threads at once.
 *
 * <p>At first every one-way hold bears and all play is taken up.
 */
public final class FrameStiffness {

  private static final int SIX = BlockStructure.BLOCK;

  private final Frame frame;
  private final BeamColumnModel[] bars;
  private final int[] firstNodes;
  private final int[] secondNodes;
  private final BlockStructure structure;
  private final BlockMatrix.Pair[] pairs;
  private final boolean[] fixed;
  private final double[] spring;
  private final double[] like;
  private final double[] longest;
  private final double[] own = new double[SegmentModel.ENDS * SegmentModel.ENDS];
  private List<IdleTurns.Hold> idle = List.of();

  /**
   * Prepares a frame.
   *
   * @throws spanledger.analysis.MechanismException if the frame can move without resistance even
   *     when all holds bear
   * @throws IllegalArgumentException if a segment has no length, a property is out of its domain or
   *     a node has two supports
   */
  public FrameStiffness(Frame frame) {
    this(new FrameAnalysis(frame));
  }

  /** The same from an analysis that is at hand. */
  public FrameStiffness(FrameAnalysis analysis) {
    frame = analysis.frame();
    int nodes = frame.nodes().size();
    int count = frame.segments().size();
    bars = new BeamColumnModel[count];
    firstNodes = new int[count];
    secondNodes = new int[count];
    longest = new double[nodes];
    for (Segment segment : frame.segments()) {
      int s = segment.index();
      bars[s] = new BeamColumnModel(analysis.model(segment));
      firstNodes[s] = frame.indexOf(segment.first());
      secondNodes[s] = frame.indexOf(segment.second());
      double length = bars[s].model().length();
      longest[firstNodes[s]] = Math.max(longest[firstNodes[s]], length);
      longest[secondNodes[s]] = Math.max(longest[secondNodes[s]], length);
    }
    structure = new BlockStructure(neighbours(nodes));
    pairs = new BlockMatrix.Pair[count];
    for (int s = 0; s < count; s++) {
      pairs[s] = BlockMatrix.pair(structure, firstNodes[s], secondNodes[s]);
    }
    fixed = new boolean[SIX * nodes];
    spring = new double[SIX * nodes];
    like = new double[2 * nodes];
    for (Support support : frame.supports()) {
      for (Freedom freedom : Freedom.values()) {
        Restraint restraint = support.restraint(freedom).engaged();
        int at = SIX * frame.indexOf(support.node()) + freedom.ordinal();
        fixed[at] = restraint instanceof Restraint.Fixed;
        spring[at] = restraint instanceof Restraint.Spring held ? held.stiffness() : 0;
      }
    }
    settle();
  }

  private int[][] neighbours(int nodes) {
    int[] degree = new int[nodes];
    for (int s = 0; s < firstNodes.length; s++) {
      degree[firstNodes[s]]++;
      degree[secondNodes[s]]++;
    }
    int[][] lists = new int[nodes][];
    for (int n = 0; n < nodes; n++) {
      lists[n] = new int[degree[n]];
    }
    Arrays.fill(degree, 0);
    for (int s = 0; s < firstNodes.length; s++) {
      lists[firstNodes[s]][degree[firstNodes[s]]++] = secondNodes[s];
      lists[secondNodes[s]][degree[secondNodes[s]]++] = firstNodes[s];
    }
    for (int n = 0; n < nodes; n++) {
      lists[n] = Arrays.stream(lists[n]).sorted().distinct().toArray();
    }
    return lists;
  }

  /** The frame. */
  public Frame frame() {
    return frame;
  }

  /** Which blocks matrices of this frame have. */
  public BlockStructure structure() {
    return structure;
  }

  /** How many movements: six per node, held ones included. */
  public int size() {
    return structure.size();
  }

  /** How many segments. */
  public int bars() {
    return bars.length;
  }

  /** A segment, by its place in the frame. */
  public BeamColumnModel bar(int segment) {
    return bars[segment];
  }

  /** The place of a segment's first node. */
  public int firstNode(int segment) {
    return firstNodes[segment];
  }

  /** The place of a segment's second node. */
  public int secondNode(int segment) {
    return secondNodes[segment];
  }

  /** The longest segment at a node, mm. */
  public double longest(int node) {
    return longest[node];
  }

  /** Whether a freedom (six per node) is held. */
  public boolean isFixed(int freedom) {
    return fixed[freedom];
  }

  /** The stiffness of a support spring at a freedom. */
  public double spring(int freedom) {
    return spring[freedom];
  }

  /**
   * Sets how a support holds a freedom.
   *
   * @param holding N/mm or N·mm/rad; infinite if held, 0 if free
   */
  public void setSupport(int freedom, double holding) {
    fixed[freedom] = Double.isInfinite(holding);
    spring[freedom] = fixed[freedom] ? 0 : holding;
  }

  /**
   * Finds what the present state of joints and supports leaves idle; to be called after any of them
   * was set.
   */
  public void settle() {
    BlockMatrix free = new BlockMatrix(structure);
    for (int s = 0; s < bars.length; s++) {
      bars[s].setForce(0);
      bars[s].stiffness(own);
      free.addPair(pairs[s], own);
    }
    List<IdleTurns.Hold> found = new ArrayList<>();
    double[] block = new double[9];
    boolean[] held = new boolean[3];
    for (int n = 0; n < structure.nodes(); n++) {
      like[2 * n] = free.diagonal(n, 0) + free.diagonal(n, 1) + free.diagonal(n, 2);
      like[2 * n + 1] = free.diagonal(n, 3) + free.diagonal(n, 4) + free.diagonal(n, 5);
      int at = structure.blockOf(n, n);
      for (int i = 0; i < 3; i++) {
        held[i] = fixed[SIX * n + 3 + i];
        for (int j = 0; j < 3; j++) {
          block[3 * i + j] = free.values()[at + SIX * (3 + i) + 3 + j];
        }
        block[4 * i] += spring[SIX * n + 3 + i];
      }
      if (longest[n] > 0) {
        IdleTurns.addIdle(n, block, held, like[2 * n] * longest[n] * longest[n], found);
      }
    }
    idle = List.copyOf(found);
  }

  /** Turns that nothing acts on in the present state; they are held. */
  public List<IdleTurns.Hold> idle() {
    return idle;
  }

  /**
   * Puts the stiffness together, and leaves every segment with its force set.
   *
   * @param forces mean axial force of each segment, N, tension positive, not modified
   * @param factor on the forces
   * @param into overwritten
   */
  public void assemble(double[] forces, double factor, BlockMatrix into) {
    into.clear();
    for (int s = 0; s < bars.length; s++) {
      bars[s].setForce(factor * forces[s]);
      bars[s].stiffness(own);
      into.addPair(pairs[s], own);
    }
    for (int n = 0; n < structure.nodes(); n++) {
      for (int i = 0; i < SIX; i++) {
        if (spring[SIX * n + i] > 0) {
          into.addDiagonal(n, i, spring[SIX * n + i]);
        }
      }
    }
    for (IdleTurns.Hold hold : idle) {
      Vector a = hold.axis();
      double[] axis = {a.x(), a.y(), a.z()};
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          into.addOwn(hold.node(), 3 + i, 3 + j, hold.stiffness() * axis[i] * axis[j]);
        }
      }
    }
    into.hold(fixed);
  }

  /** How many segments have buckled between their nodes under the forces last set, all held. */
  public int buckledBetweenNodes() {
    int sum = 0;
    for (BeamColumnModel bar : bars) {
      sum += bar.force() < 0 ? bar.buckledBetweenNodes() : 0;
    }
    return sum;
  }

  /**
   * The least share of its own stiffness that any freedom keeps when the others may move; negative
   * if the matrix is not positive definite.
   */
  public double leastPivotRatio(BlockFactor factor) {
    double least = 1;
    for (int n = 0; n < structure.nodes(); n++) {
      for (int i = 0; i < SIX; i++) {
        double own = like[2 * n + (i < 3 ? 0 : 1)];
        if (!fixed[SIX * n + i] && own > 0) {
          least = Math.min(least, factor.pivot(n, i) / own);
        }
      }
    }
    return least;
  }

  /**
   * What the stiffness of a freedom compares with: that of its kind at its node, without supports.
   */
  public double like(int freedom) {
    return like[2 * (freedom / SIX) + (freedom % SIX < 3 ? 0 : 1)];
  }

  /** Copies the movements of a segment's two nodes. */
  public void gather(double[] movements, int segment, double[] into) {
    System.arraycopy(movements, SIX * firstNodes[segment], into, 0, SIX);
    System.arraycopy(movements, SIX * secondNodes[segment], into, SIX, SIX);
  }
}
