package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import spanledger.analysis.InternalForces;
import spanledger.analysis.Reaction;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.section.SectionProperties;
import spanledger.state.LoadState;

/** What a combination does to members in first order, where sums over load cases suffice. */
final class SummedForces implements MemberForces {

  private final Frame frame;
  private final Instance instance;
  private final List<LoadState.Part> parts;
  private final Function<Segment, double[]> endForces;
  private final Function<Node, Reaction> reactions;
  private final CaseLoads loads;
  private final Map<Integer, SegmentResponse> responses = new HashMap<>();

  /**
   * @param parts the cases of the combination with their factors
   * @param endForces of a segment under all of them, the first six at its first end
   * @param reactions of the support of a node under all of them
   * @param loads what the cases put on segments
   */
  SummedForces(
      Frame frame,
      Instance instance,
      List<LoadState.Part> parts,
      Function<Segment, double[]> endForces,
      Function<Node, Reaction> reactions,
      CaseLoads loads) {
    this.frame = frame;
    this.instance = instance;
    this.parts = parts;
    this.endForces = endForces;
    this.reactions = reactions;
    this.loads = loads;
  }

  @Override
  public Instance instance() {
    return instance;
  }

  @Override
  public List<Station> cuts(Member member) {
    SectionProperties section = member.section().properties();
    List<Station> cuts = new ArrayList<>();
    for (Segment segment : frame.segmentsOf(member)) {
      double[] places =
          response(segment)
              .candidateStations(
                  section.area(), section.elasticModulusY(), section.elasticModulusZ());
      Arrays.stream(places).distinct().forEach(x -> cuts.add(new Station(segment, x)));
    }
    return cuts;
  }

  @Override
  public void at(Station cut, double[] into) {
    SegmentResponse response = response(cut.segment());
    if (cut.x() > 0) {
      response.forces(cut.x(), Side.BEFORE, into);
      return;
    }
    // A load on the very start lies after this cut; the curve begins after it.
    InternalForces atStart = response.at(cut.x(), Side.BEFORE);
    into[0] = atStart.axial();
    into[1] = atStart.shearY();
    into[2] = atStart.shearZ();
    into[3] = atStart.torque();
    into[4] = atStart.momentY();
    into[5] = atStart.momentZ();
  }

  @Override
  public Reaction reaction(Node node) {
    return reactions.apply(node);
  }

  private SegmentResponse response(Segment segment) {
    return responses.computeIfAbsent(
        segment.index(),
        i -> loads.on(segment, parts).plusStartForces(endForces.apply(segment), 0, 1));
  }
}
