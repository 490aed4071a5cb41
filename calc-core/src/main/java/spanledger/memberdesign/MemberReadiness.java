package spanledger.memberdesign;

import java.util.List;
import java.util.stream.Collectors;
import spanledger.frame.Member;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.PreparedMember;

/** Whether a member of the frame can be judged by the member code. */
public sealed interface MemberReadiness {

  /** The member of the frame. */
  Member member();

  /** It can be judged. */
  record Ready(Member member, PreparedMember prepared) implements MemberReadiness {}

  /**
   * It cannot.
   *
   * @param lacks everything that is missing, at least one
   */
  record Lacking(Member member, List<NotCheckable.Lack> lacks) implements MemberReadiness {
    public Lacking {
      lacks = List.copyOf(lacks);
    }

    /** What stands in the way and what to do, in one line. */
    public String words() {
      return lacks.stream()
          .map(lack -> lack.found() + "; " + lack.add())
          .distinct()
          .collect(Collectors.joining(". "));
    }
  }
}
