package spanledger.memberdesign;

import spanledger.envelope.Governing;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Use;

/**
 * The worst of one check of a member code along one member.
 *
 * @param member the member of the frame, ready to be checked
 * @param use the check
 * @param index its place among the member's uses
 * @param governing where the worst was found; its value is the use
 */
public record MemberUse(MemberReadiness.Ready member, Use use, int index, Governing governing) {

  /** The member as the code sees it. */
  public PreparedMember prepared() {
    return member.prepared();
  }
}
