package spanledger.joint;

/** A kind of foot: what is between a supported node and the ground. */
public sealed interface FootType extends JointType permits BasePlateFoot, ClampFoot, DeclaredFoot {}
