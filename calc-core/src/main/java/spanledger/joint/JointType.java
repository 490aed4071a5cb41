package spanledger.joint;

import spanledger.provenance.Source;

/** A kind of joint or foot, described by its parts. */
public sealed interface JointType permits BracketJoint, FootType {

  /** Its name in the job. */
  String name();

  /** Where the description comes from. */
  Source source();
}
