package spanledger.envelope;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.Combination;
import spanledger.action.LoadCase;
import spanledger.action.MovingLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.LocalLoad;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.WeightedLoad;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;

/**
 * What the frame does under every fixed case, and under unit loads at the nodes that moving loads
 * can reach.
 *
 * <p>A force between two nodes acts on the rest of the frame as its fixed-end forces at those nodes
 * do, so the response to a moving load anywhere on a segment is a sum of twelve unit responses and
 * a local part of the loaded segment itself.
 */
final class Responses {

  private static final int SIX = 6;
  private static final int ENDS = SegmentModel.ENDS;

  private final Frame frame;
  private final FrameAnalysis analysis;
  private final Map<String, List<Segment>> segmentsByNode = new HashMap<>();
  private final Map<String, CaseResult> results = new HashMap<>();

  /** By identity: comparing loads by value would compare whole members. */
  private final IdentityHashMap<SegmentLoad, LocalLoad> localLoads = new IdentityHashMap<>();

  /** By node and freedom; null where no moving load can reach the node. */
  private final double[] @Nullable [] unitMovements;

  private final double[] @Nullable [] unitEndForces;
  private final int[] firstNodes;
  private final int[] secondNodes;
  private final int[] members;
  private final Map<String, Integer> memberIndices = new HashMap<>();
  private final double[] own = new double[ENDS];
  private final double[] ofNodes = new double[ENDS];

  Responses(FrameAnalysis analysis, Actions actions) {
    this.frame = analysis.frame();
    this.analysis = analysis;
    List<LoadCase> cases = actions.cases().stream().map(CategorisedCase::loads).toList();
    analysis.solve(cases).results().forEach(r -> results.put(r.loadCase().name(), r));
    for (Member member : frame.members()) {
      memberIndices.put(member.name(), memberIndices.size());
    }
    int count = frame.segments().size();
    firstNodes = new int[count];
    secondNodes = new int[count];
    members = new int[count];
    for (Segment segment : frame.segments()) {
      firstNodes[segment.index()] = frame.indexOf(segment.first());
      secondNodes[segment.index()] = frame.indexOf(segment.second());
      members[segment.index()] = indexOf(segment.member());
      for (Node node : List.of(segment.first(), segment.second())) {
        segmentsByNode.computeIfAbsent(node.name(), n -> new ArrayList<>()).add(segment);
      }
    }
    unitMovements = new double[frame.nodes().size() * SIX][];
    unitEndForces = new double[frame.nodes().size() * SIX][];
    double[] work = new double[analysis.unknowns()];
    for (MovingLoad load : actions.movingLoads()) {
      for (MovingLoad.Lane lane : load.lanes()) {
        solveUnits(frame.indexOf(lane.segment().first()), work);
        solveUnits(frame.indexOf(lane.segment().second()), work);
      }
    }
  }

  private void solveUnits(int node, double[] work) {
    if (unitMovements[node * SIX] != null) {
      return;
    }
    double[] ofSegment = new double[ENDS];
    double[] deformations = new double[SegmentModel.DEFORMATIONS];
    double[] forces = new double[ENDS];
    for (Freedom freedom : Freedom.values()) {
      double[] movements = new double[frame.nodes().size() * SIX];
      analysis.solveUnit(frame.nodes().get(node), freedom, movements, work);
      double[] all = new double[frame.segments().size() * ENDS];
      for (Segment segment : frame.segments()) {
        gather(movements, segment, ofSegment);
        SegmentModel model = analysis.model(segment);
        model.deformations(ofSegment, deformations);
        model.endForces(deformations, forces);
        System.arraycopy(forces, 0, all, segment.index() * ENDS, ENDS);
      }
      unitMovements[node * SIX + freedom.ordinal()] = movements;
      unitEndForces[node * SIX + freedom.ordinal()] = all;
    }
  }

  /** Copies the movements of the two nodes of a segment. */
  void gather(double[] movements, Segment segment, double[] into) {
    System.arraycopy(movements, firstNodes[segment.index()] * SIX, into, 0, SIX);
    System.arraycopy(movements, secondNodes[segment.index()] * SIX, into, SIX, SIX);
  }

  /** The place of a member in the frame. */
  final int indexOf(Member member) {
    Integer index = memberIndices.get(member.name());
    if (index == null) {
      throw new IllegalArgumentException("No member is named " + member.name() + ".");
    }
    return index;
  }

  /** The place in the frame of the member that a segment is part of. */
  int memberOf(Segment segment) {
    return members[segment.index()];
  }

  Frame frame() {
    return frame;
  }

  FrameAnalysis analysis() {
    return analysis;
  }

  CaseResult result(LoadCase loadCase) {
    CaseResult result = results.get(loadCase.name());
    if (result == null) {
      throw new IllegalArgumentException("Case " + loadCase.name() + " was not solved.");
    }
    return result;
  }

  /** How well the solved cases meet equilibrium. */
  Proof proof() {
    double worst = 0;
    for (CaseResult result : results.values()) {
      worst = Math.max(worst, result.equilibrium().nodeResidual());
    }
    return new Proof(results.size(), worst, analysis.unknowns());
  }

  /** The segments that meet at a node. */
  List<Segment> segmentsAt(Node node) {
    return segmentsByNode.getOrDefault(node.name(), List.of());
  }

  /** A load in the axes of its segment. */
  LocalLoad local(SegmentLoad load) {
    return new LocalLoad(load, analysis.model(load.segment()));
  }

  /** The fixed part of a combination. */
  CombinedState combined(Combination combination) {
    double[] movements = new double[frame.nodes().size() * SIX];
    double[] endForces = new double[frame.segments().size() * ENDS];
    List<List<WeightedLoad>> loads = new ArrayList<>();
    frame.segments().forEach(s -> loads.add(new ArrayList<>()));
    for (Combination.Term term : combination.terms()) {
      double factor = combination.factor(term);
      result(term.loadCase()).addTo(factor, movements, endForces);
      for (SegmentLoad load : term.loadCase().segmentLoads()) {
        LocalLoad own = localLoads.computeIfAbsent(load, this::local);
        loads.get(load.segment().index()).add(new WeightedLoad(own, factor));
      }
    }
    return new CombinedState(combination, movements, endForces, loads);
  }

  /** A combination's fixed part with its moving load standing somewhere. */
  CombinedState with(CombinedState fixed, Standing standing, double factor) {
    Segment loaded = standing.lane().segment();
    LocalLoad load = local(standing.placed());
    double[] movements = fixed.movements().clone();
    double[] endForces = fixed.endForces().clone();
    addMovements(load, loaded, factor, movements);
    addAllEndForces(load, loaded, factor, endForces);
    List<List<WeightedLoad>> loads = new ArrayList<>(fixed.loads());
    List<WeightedLoad> own = new ArrayList<>(loads.get(loaded.index()));
    own.add(new WeightedLoad(load, factor));
    loads.set(loaded.index(), own);
    return new CombinedState(fixed.combination(), movements, endForces, loads);
  }

  /**
   * What a load hands to the two nodes of its segment if they stay where they are; twelve, global.
   */
  double[] onNodes(LocalLoad load, Segment loaded) {
    SegmentModel model = analysis.model(loaded);
    double[] moments = new double[SegmentModel.LOAD_MOMENTS];
    double[] fixedEnds = new double[ENDS];
    double[] onNodes = new double[ENDS];
    load.addMoments(1, moments);
    model.addFixedEndForces(moments, 1, fixedEnds);
    model.nodeForces(fixedEnds, onNodes);
    for (int i = 0; i < ENDS; i++) {
      onNodes[i] = -onNodes[i];
    }
    return onNodes;
  }

  /** Adds the end forces of one segment, without the fixed-end part of the loaded one. */
  void addEndForces(
      double[] onNodes, Segment loaded, double factor, Segment segment, double[] into) {
    addUnits(unitEndForces, onNodes, loaded, factor, segment.index() * ENDS, ENDS, into);
  }

  /** Adds the movements of one segment's nodes. */
  void addMovements(
      double[] onNodes, Segment loaded, double factor, Segment segment, double[] into) {
    int first = firstNodes[segment.index()] * SIX;
    int second = secondNodes[segment.index()] * SIX;
    if (isFirstOf(segment)) {
      addUnits(unitMovements, onNodes, loaded, factor, first, SIX, into);
    }
    addUnits(unitMovements, onNodes, loaded, factor, second, SIX, into);
  }

  /** Copies the movements of one segment's nodes, each node of a member once. */
  void copyMovements(double[] from, Segment segment, double[] into) {
    int first = firstNodes[segment.index()] * SIX;
    int second = secondNodes[segment.index()] * SIX;
    if (isFirstOf(segment)) {
      System.arraycopy(from, first, into, first, SIX);
    }
    System.arraycopy(from, second, into, second, SIX);
  }

  private static boolean isFirstOf(Segment segment) {
    return segment.order() == 0;
  }

  /** Adds the fixed-end part of the loaded segment. */
  void addFixedEnds(LocalLoad load, Segment loaded, double factor, double[] into) {
    double[] moments = new double[SegmentModel.LOAD_MOMENTS];
    double[] fixedEnds = new double[ENDS];
    load.addMoments(1, moments);
    analysis.model(loaded).addFixedEndForces(moments, factor, fixedEnds);
    for (int i = 0; i < ENDS; i++) {
      into[loaded.index() * ENDS + i] += fixedEnds[i];
    }
  }

  /**
   * Adds the end forces of all segments under a standing load.
   *
   * @param into twelve per segment, added to
   */
  void addAllEndForces(LocalLoad load, Segment loaded, double factor, double[] into) {
    addUnits(unitEndForces, onNodes(load, loaded), loaded, factor, 0, into.length, into);
    addFixedEnds(load, loaded, factor, into);
  }

  /**
   * Adds the movements of all nodes under a standing load.
   *
   * @param into six per node, added to
   */
  void addMovements(LocalLoad load, Segment loaded, double factor, double[] into) {
    addUnits(unitMovements, onNodes(load, loaded), loaded, factor, 0, into.length, into);
  }

  private void addUnits(
      double[] @Nullable [] units,
      double[] onNodes,
      Segment loaded,
      double factor,
      int from,
      int count,
      double[] into) {
    for (int end = 0; end < ENDS; end++) {
      double force = onNodes[end] * factor;
      if (force != 0) {
        double[] unit = unit(units, loaded, end);
        for (int i = from; i < from + count; i++) {
          into[i] += force * unit[i];
        }
      }
    }
  }

  /**
   * The reaction of a support to a unit load on each freedom of each node that moving loads reach;
   * six per node.
   */
  double[] reactionInfluence(Node node, Freedom freedom) {
    double[] influence = new double[unitEndForces.length];
    for (int at = 0; at < influence.length; at++) {
      double[] unit = unitEndForces[at];
      influence[at] = unit == null ? 0 : taken(unit, node, freedom);
    }
    influence[frame.indexOf(node) * SIX + freedom.ordinal()] -= 1;
    return influence;
  }

  /** The effect of what a load hands to the nodes of its segment. */
  double effect(double[] onNodes, Segment loaded, double[] influence) {
    double sum = 0;
    for (int end = 0; end < ENDS; end++) {
      sum += onNodes[end] * influence[nodeOf(loaded, end) * SIX + end % SIX];
    }
    return sum;
  }

  /** What the segments at a node take from it. */
  double taken(double[] endForces, Node node, Freedom freedom) {
    double sum = 0;
    for (Segment segment : segmentsAt(node)) {
      System.arraycopy(endForces, segment.index() * ENDS, own, 0, ENDS);
      analysis.model(segment).nodeForces(own, ofNodes);
      if (segment.first().name().equals(node.name())) {
        sum += ofNodes[freedom.ordinal()];
      }
      if (segment.second().name().equals(node.name())) {
        sum += ofNodes[SIX + freedom.ordinal()];
      }
    }
    return sum;
  }

  private int nodeOf(Segment segment, int end) {
    return end < SIX ? firstNodes[segment.index()] : secondNodes[segment.index()];
  }

  private double[] unit(double[] @Nullable [] units, Segment loaded, int end) {
    double[] unit = units[nodeOf(loaded, end) * SIX + end % SIX];
    if (unit == null) {
      throw new IllegalStateException("Segment " + loaded.name() + " is not in any lane.");
    }
    return unit;
  }
}
