package spanledger.jointdesign;

import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Node;

/** Where a joint is: at a member end, or under a supported node. */
public sealed interface JointPlace permits JointEnd, FootPlace {

  /** In words, unique in a frame. */
  String name();

  /** The node at which it is. */
  Node node();

  /** The cut at the end of a member there, beyond the rigid arm to the node. */
  Station station(Frame frame);
}
