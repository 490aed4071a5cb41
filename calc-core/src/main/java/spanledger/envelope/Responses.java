package spanledger.envelope;

import java.util.ArrayList;
import java.util.Arrays;
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
  private final double[] fixedEnds = new double[ENDS];
  private final double[] onNodes = new double[ENDS];

  Responses(FrameAnalysis analysis, Actions actions) {
    this.frame = analysis.frame();
    this.analysis = analysis;
    List<LoadCase> cases = actions.cases().stream().map(CategorisedCase::loads).toList();
    analysis.solve(cases).results().forEach(r -> results.put(r.loadCase().name(), r));
    for (Segment segment : frame.segments()) {
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

  private void gather(double[] movements, Segment segment, double[] into) {
    System.arraycopy(movements, frame.indexOf(segment.first()) * SIX, into, 0, SIX);
    System.arraycopy(movements, frame.indexOf(segment.second()) * SIX, into, SIX, SIX);
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
    return new CombinedState(movements, endForces, loads);
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
    return new CombinedState(movements, endForces, loads);
  }

  /**
   * Adds the end forces of one segment under a standing load.
   *
   * @param into twelve from {@code at} on, added to
   */
  void addEndForces(
      LocalLoad load, Segment loaded, double factor, Segment segment, double[] into, int at) {
    toNodes(load, loaded);
    for (int end = 0; end < ENDS; end++) {
      double force = onNodes[end] * factor;
      if (force != 0) {
        double[] unit = unit(unitEndForces, loaded, end);
        int from = segment.index() * ENDS;
        for (int i = 0; i < ENDS; i++) {
          into[at + i] += force * unit[from + i];
        }
      }
    }
    if (segment.index() == loaded.index()) {
      for (int i = 0; i < ENDS; i++) {
        into[at + i] += factor * fixedEnds[i];
      }
    }
  }

  /**
   * Adds the end forces of all segments under a standing load.
   *
   * @param into twelve per segment, added to
   */
  void addAllEndForces(LocalLoad load, Segment loaded, double factor, double[] into) {
    toNodes(load, loaded);
    addUnits(unitEndForces, loaded, factor, into);
    for (int i = 0; i < ENDS; i++) {
      into[loaded.index() * ENDS + i] += factor * fixedEnds[i];
    }
  }

  /**
   * Adds the movements of all nodes under a standing load.
   *
   * @param into six per node, added to
   */
  void addMovements(LocalLoad load, Segment loaded, double factor, double[] into) {
    toNodes(load, loaded);
    addUnits(unitMovements, loaded, factor, into);
  }

  private void addUnits(double[] @Nullable [] units, Segment loaded, double factor, double[] into) {
    for (int end = 0; end < ENDS; end++) {
      double force = onNodes[end] * factor;
      if (force != 0) {
        double[] unit = unit(units, loaded, end);
        for (int i = 0; i < unit.length; i++) {
          into[i] += force * unit[i];
        }
      }
    }
  }

  private double[] unit(double[] @Nullable [] units, Segment loaded, int end) {
    int node = frame.indexOf(end < SIX ? loaded.first() : loaded.second());
    double[] unit = units[node * SIX + end % SIX];
    if (unit == null) {
      throw new IllegalStateException("Segment " + loaded.name() + " is not in any lane.");
    }
    return unit;
  }

  /** Turns the load into what its segment hands to nodes that stay where they are. */
  private void toNodes(LocalLoad load, Segment loaded) {
    SegmentModel model = analysis.model(loaded);
    double[] moments = new double[SegmentModel.LOAD_MOMENTS];
    load.addMoments(1, moments);
    Arrays.fill(fixedEnds, 0);
    model.addFixedEndForces(moments, 1, fixedEnds);
    model.nodeForces(fixedEnds, onNodes);
    for (int i = 0; i < ENDS; i++) {
      onNodes[i] = -onNodes[i];
    }
  }
}
