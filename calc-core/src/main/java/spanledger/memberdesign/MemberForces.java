package spanledger.memberdesign;

import java.util.List;
import spanledger.analysis.Reaction;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.frame.Member;
import spanledger.frame.Node;

/** A state of the frame: what a combination, with its moving load at one place, does to members. */
public interface MemberForces {

  /** The combination with the place of its moving load. */
  Instance instance();

  /** Cuts of a member that hold the turning points of its internal forces. */
  List<Station> cuts(Member member);

  /**
   * Internal forces at a cut.
   *
   * @param into N, V_y, V_z, T, M_y, M_z from place 0
   */
  void at(Station cut, double[] into);

  /** What the support of a node does to it, global axes; all zero where there is none. */
  Reaction reaction(Node node);
}
