package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.analysis.BeamColumnResponse;
import spanledger.analysis.InternalForces;
import spanledger.analysis.Reaction;
import spanledger.analysis.Side;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.state.StateResult;

/** What a combination solved as a state does to members. */
final class StateForces implements MemberForces {

  private final Frame frame;
  private final Instance instance;
  private final StateResult state;
  private final Map<Integer, BeamColumnResponse> responses = new HashMap<>();

  StateForces(Frame frame, Instance instance, StateResult state) {
    this.frame = frame;
    this.instance = instance;
    this.state = state;
  }

  @Override
  public Instance instance() {
    return instance;
  }

  @Override
  public List<Station> cuts(Member member) {
    List<Station> cuts = new ArrayList<>();
    for (Segment segment : frame.segmentsOf(member)) {
      for (double x : response(segment).turningStations()) {
        cuts.add(new Station(segment, x));
      }
    }
    return cuts;
  }

  @Override
  public void at(Station cut, double[] into) {
    InternalForces forces = response(cut.segment()).at(cut.x(), Side.BEFORE);
    into[0] = forces.axial();
    into[1] = forces.shearY();
    into[2] = forces.shearZ();
    into[3] = forces.torque();
    into[4] = forces.momentY();
    into[5] = forces.momentZ();
  }

  @Override
  public Reaction reaction(Node node) {
    return state.reaction(node);
  }

  private BeamColumnResponse response(Segment segment) {
    return responses.computeIfAbsent(segment.index(), i -> state.response(segment));
  }
}
