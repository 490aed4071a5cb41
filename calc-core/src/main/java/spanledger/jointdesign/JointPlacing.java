package spanledger.jointdesign;

import java.util.Optional;
import spanledger.joint.BracketJoint;
import spanledger.memberdesign.MemberPick;

/**
 * Which member ends have a joint.
 *
 * @param members the members
 * @param ends which of their ends
 * @param joint what they are joined with
 * @param kept why the analysis may take another stiffness than the parts give, if the job says so
 */
public record JointPlacing(
    MemberPick members, Ends ends, BracketJoint joint, Optional<KeptStiffness> kept) {}
