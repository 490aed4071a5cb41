package spanledger.jointdesign;

import spanledger.joint.FootLie;
import spanledger.joint.FootType;
import spanledger.memberdesign.MemberPick;

/**
 * Which supports have a foot.
 *
 * @param supports the supported nodes, by name
 * @param foot what they stand on
 * @param lie how it lies on the ground
 */
public record FootPlacing(MemberPick supports, FootType foot, FootLie lie) {}
