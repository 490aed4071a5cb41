package spanledger.jointdesign;

import spanledger.joint.BracketJoint;
import spanledger.memberdesign.MemberPick;

/**
 * Which member ends have a joint.
 *
 * @param members the members
 * @param ends which of their ends
 * @param joint what they are joined with
 */
public record JointPlacing(MemberPick members, Ends ends, BracketJoint joint) {}
