package spanledger.joint;

import spanledger.provenance.Source;

/** A kind of joint or foot: described by its parts, or known by tests. */
public sealed interface JointType permits BracketJoint, FootType, TestedTurn {

  /** Its name in the job. */
  String name();

  /** Where the description comes from. */
  Source source();
}
