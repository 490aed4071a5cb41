package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.LoadPath;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentEffect;
import spanledger.analysis.SegmentInfluence;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/**
 * What a load anywhere adds to one effect.
 *
 * <p>By the reciprocal theorem (Maxwell 1864, Betti 1872) the frame, moved by a unit of what works
 * on the effect, shows the influence of a load anywhere as its movement along that load: under a
 * kink or gap of 1 at a cut for an internal force there, under a force of 1 for a movement, with a
 * support gone by -1 for its reaction. On the segment that is cut comes what the load does while
 * the segment's nodes are held.
 */
public final class Influence {

  private static final LoadOrigin UNIT = new LoadOrigin.Given("unit load");

  private final FrameAnalysis analysis;
  private final LinearEffect effect;
  private final List<NodalLoad> loads = new ArrayList<>();
  private final double[] movements;
  private final SegmentInfluences influences;

  private Influence(FrameAnalysis analysis, LinearEffect effect) {
    this.analysis = analysis;
    this.influences = new SegmentInfluences(analysis);
    this.effect = effect;
    Frame frame = analysis.frame();
    double[] weights = effect.weights(6 * frame.nodes().size());
    for (int n = 0; n < frame.nodes().size(); n++) {
      Vector force = vector(weights, 6 * n);
      Vector moment = vector(weights, 6 * n + 3);
      if (force.norm() + moment.norm() > 0) {
        loads.add(new NodalLoad(frame.nodes().get(n), force, moment, "influence"));
      }
    }
    LoadCase unit = new LoadCase("influence", loads, List.of());
    CaseResult solved = analysis.solve(List.of(unit)).result(unit);
    movements = new double[weights.length];
    for (int n = 0; n < frame.nodes().size(); n++) {
      for (Freedom freedom : Freedom.values()) {
        int at = 6 * n + freedom.ordinal();
        movements[at] = solved.movement(frame.nodes().get(n), freedom) + effect.direct(at);
      }
    }
  }

  private static Vector vector(double[] values, int at) {
    return new Vector(values[at], values[at + 1], values[at + 2]);
  }

  /**
   * Of an internal force at a cut.
   *
   * @throws IllegalArgumentException if the effect is a deflection
   */
  public static Influence ofForce(FrameAnalysis analysis, Station station, SegmentEffect force) {
    return new Influence(analysis, new CutForce(analysis, station, force));
  }

  /** Of the movement of a cut along a direction, from where it stood. */
  public static Influence ofMovement(FrameAnalysis analysis, Station station, Vector direction) {
    return new Influence(
        analysis, new CutDeflection(analysis, DeflectionFinding.Kind.MOVEMENT, direction, station));
  }

  /** Of the reaction of a support that is held in a freedom. */
  public static Influence ofReaction(FrameAnalysis analysis, Support support, Freedom freedom) {
    return new Influence(analysis, new SupportReaction(analysis, support, freedom));
  }

  /**
   * The forces on nodes that move the frame so: N per unit of the effect, or N·mm. For a reaction
   * they are what its neighbours feel when the support goes.
   */
  public List<NodalLoad> loads() {
    return List.copyOf(loads);
  }

  /** How a node moves, mm or rad per unit. */
  public double movement(Node node, Freedom freedom) {
    return movements[6 * analysis.frame().indexOf(node) + freedom.ordinal()];
  }

  /**
   * The effect of a force of 1 N that stands on a path.
   *
   * @param at mm along the path
   */
  public double ordinate(LoadPath path, double at) {
    double[] marks = path.marks();
    int lane = 0;
    while (lane + 1 < path.lanes().size() && marks[lane + 1] <= at) {
      lane++;
    }
    LoadPath.Lane on = path.lanes().get(lane);
    return ordinate(on.segment(), on.direction(), on.on(at - marks[lane]));
  }

  /**
   * The effect of a force of 1 N on a segment.
   *
   * @param direction of the force, of length 1, global
   * @param x mm from the segment's start
   */
  public double ordinate(Segment segment, Vector direction, double x) {
    SegmentInfluence.Placed placed =
        influences
            .of(segment)
            .place(new SegmentLoad.Point(segment, LoadAxes.GLOBAL, direction, UNIT, 1, x));
    double[] onNodes = placed.onNodes();
    double sum = 0;
    for (int i = 0; i < onNodes.length; i++) {
      sum += onNodes[i] * movements[6 * placed.influence().node(i / 6) + i % 6];
    }
    for (Station own : effect.own()) {
      if (own.segment().index() == segment.index()) {
        sum += effect.held(placed);
      }
    }
    return sum;
  }
}
