package spanledger.memberdesign;

import java.util.Set;
import spanledger.frame.Member;
import spanledger.provenance.Source;
import spanledger.resistance.member.BucklingMode;

/**
 * A buckling length of some modes of some members.
 *
 * @param members the members
 * @param modes the modes
 * @param basis how long
 * @param reason why, in the engineer's words
 * @param source where it comes from
 */
public record LengthRule(
    MemberPick members, Set<BucklingMode> modes, LengthBasis basis, String reason, Source source) {

  public LengthRule {
    modes = Set.copyOf(modes);
  }

  boolean covers(Member member, BucklingMode mode) {
    return modes.contains(mode) && members.picks(member);
  }
}
