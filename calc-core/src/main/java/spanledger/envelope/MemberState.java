package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Combination;
import spanledger.action.MovingLoad;
import spanledger.analysis.LocalLoad;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.WeightedLoad;
import spanledger.frame.Member;
import spanledger.frame.Segment;

/**
 * A combination with its moving load standing on a lane, for one member: end forces of its
 * segments, movements of its nodes and loads on it. Everything else is left as in the fixed part.
 */
final class MemberState {

  private static final int ENDS = SegmentModel.ENDS;

  private final Responses responses;
  private final CombinedState fixed;
  private final Combination.MovingTerm term;
  private final MovingLoad.Lane lane;
  private final double factor;
  private final List<Segment> segments;
  private final double[] endForces;
  private final double[] movements;
  private List<List<WeightedLoad>> loads;
  private Instance instance;

  MemberState(Responses responses, CombinedState fixed, MovingLoad.Lane lane, Member member) {
    this.responses = responses;
    this.fixed = fixed;
    this.term = fixed.combination().moving().orElseThrow();
    this.lane = lane;
    this.factor = fixed.combination().factor(term);
    this.segments = responses.frame().segmentsOf(member);
    this.endForces = new double[fixed.endForces().length];
    this.movements = new double[fixed.movements().length];
    this.loads = fixed.loads();
    this.instance = instance(0);
  }

  private Instance instance(double at) {
    return new Instance(fixed.combination(), Optional.of(new Standing(term.load(), lane, at)));
  }

  /** Puts the load at a place, mm from the start of its segment. */
  void standAt(double at) {
    instance = instance(at);
    LocalLoad load = responses.local(term.load().placed(lane, at));
    double[] onNodes = responses.onNodes(load, lane.segment());
    boolean own = false;
    for (Segment segment : segments) {
      int from = segment.index() * ENDS;
      System.arraycopy(fixed.endForces(), from, endForces, from, ENDS);
      responses.addEndForces(onNodes, lane.segment(), factor, segment, endForces);
      responses.copyMovements(fixed.movements(), segment, movements);
      responses.addMovements(onNodes, lane.segment(), factor, segment, movements);
      own |= segment.index() == lane.segment().index();
    }
    if (own) {
      responses.addFixedEnds(load, lane.segment(), factor, endForces);
      List<WeightedLoad> onLane = new ArrayList<>(fixed.loads().get(lane.segment().index()));
      onLane.add(new WeightedLoad(load, factor));
      loads = new ArrayList<>(fixed.loads());
      loads.set(lane.segment().index(), onLane);
    }
  }

  Instance instance() {
    return instance;
  }

  /** Twelve per segment of the frame; filled for the member's segments. */
  double[] endForces() {
    return endForces;
  }

  /** Six per node of the frame; filled for the member's nodes. */
  double[] movements() {
    return movements;
  }

  List<List<WeightedLoad>> loads() {
    return loads;
  }
}
