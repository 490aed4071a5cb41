package spanledger.jointdesign;

import spanledger.joint.JointType;
import spanledger.memberdesign.MemberPick;

/**
 * Which supports have a foot.
 *
 * @param supports the supported nodes, by name
 * @param foot what they stand on
 */
public record FootPlacing(MemberPick supports, JointType foot) {}
