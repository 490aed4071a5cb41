package spanledger.analysis;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
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
  private final NodeInfluence first;
  private final NodeInfluence second;
  private final int[] nodes;

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
    this.first = first;
    this.second = second;
    this.nodes = analysis.ends(segment);
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
  }

  /** The segment that is loaded. */
  public Segment segment() {
    return loaded.segment();
  }

  /**
   * The place in the frame of a node of the loaded segment.
   *
   * @param end 0 for the first node, 1 for the second
   */
  public int node(int end) {
    return nodes[end];
  }

  /**
   * Adds the forces at end 1 of a segment under forces on the two nodes of the loaded segment.
   *
   * @param onNodes 12, as {@link Placed#onNodes}
   * @param target index of the segment
   * @param into six from {@code at} on, added to
   */
  public void addStartForces(double[] onNodes, int target, double[] into, int at) {
    for (int load = 0; load < SegmentModel.ENDS; load++) {
      double force = onNodes[load];
      if (force != 0) {
        double[] unit = load < 6 ? first.startForces(load) : second.startForces(load - 6);
        for (int i = 0; i < 6; i++) {
          into[at + i] += force * unit[6 * target + i];
        }
      }
    }
  }

  /**
   * Adds the movements of some nodes under forces on the two nodes of the loaded segment.
   *
   * @param onNodes 12, as {@link Placed#onNodes}
   * @param from first entry, of six per node
   * @param count how many entries
   * @param into {@code count} from {@code at} on, added to
   */
  public void addMovements(double[] onNodes, int from, int count, double[] into, int at) {
    for (int load = 0; load < SegmentModel.ENDS; load++) {
      double force = onNodes[load];
      if (force != 0) {
        double[] unit = load < 6 ? first.movements(load) : second.movements(load - 6);
        for (int i = 0; i < count; i++) {
          into[at + i] += force * unit[from + i];
        }
      }
    }
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
    private @Nullable SegmentResponse held;

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

    /**
     * What the load hands to the two nodes of its segment if they stay where they are; 12, global,
     * not to be modified.
     */
    public double[] onNodes() {
      return onNodes;
    }

    /** The influence of the loaded segment. */
    public SegmentInfluence influence() {
      return SegmentInfluence.this;
    }

    /** The load in the axes of its segment. */
    public LocalLoad load() {
      return load;
    }

    /** What the load does along its own segment while the nodes stay where they are. */
    public SegmentResponse held() {
      SegmentResponse known = held;
      if (known == null) {
        known =
            new SegmentResponse(
                loaded,
                Arrays.copyOf(fixedEndForces, CutForces.FORCES),
                LoadCurve.of(List.of(load), loaded.length()),
                new LocalLoad[] {load},
                new double[] {1});
        held = known;
      }
      return known;
    }

    /** What the load does along any segment. */
    public SegmentResponse response(Segment target) {
      double[] start = new double[CutForces.FORCES];
      addStartForces(onNodes, target.index(), start, 0);
      SegmentResponse alone =
          target.index() == loaded.segment().index()
              ? held()
              : SegmentResponse.none(analysis, target);
      return alone.plusStartForces(start, 0, 1);
    }
  }
}
