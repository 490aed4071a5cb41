package spanledger.memberdesign;

import java.util.List;

/**
 * What a member code says of the members of a frame.
 *
 * @param title the code, as people cite it
 * @param uses the worst of each check of each member that it can judge
 * @param lacking the members that it cannot judge, and why
 */
public record MemberJudgement(
    String title, List<MemberUse> uses, List<MemberReadiness.Lacking> lacking) {

  public MemberJudgement {
    uses = List.copyOf(uses);
    lacking = List.copyOf(lacking);
  }
}
