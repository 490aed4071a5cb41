package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds.Bound;
import spanledger.job.Job;
import spanledger.job.SpringOrigins;

/**
 * A spring of a member end that tests or the parts of a joint give.
 *
 * @param end the member end, in words
 * @param hold which of the end's holds: along, torsion, about y, about z
 * @param spring the spring
 * @param origin from where it is
 */
record SpringUse(String end, int hold, Restraint spring, SpringOrigins.Origin origin) {

  private static final List<String> HOLDS =
      List.of("along", "torsion", "bending about y", "bending about z");

  /** All of a job, member by member. */
  static List<SpringUse> of(Job job) {
    List<SpringUse> uses = new ArrayList<>();
    for (Member member : job.frame().members()) {
      add(job.springs(), member.name() + ", start", member.start(), uses);
      add(job.springs(), member.name() + ", end", member.end(), uses);
    }
    return uses;
  }

  private static void add(
      SpringOrigins origins, String end, MemberEnd holds, List<SpringUse> uses) {
    for (int hold = 0; hold < HOLDS.size(); hold++) {
      int place = hold;
      Restraint spring = holds.holds().get(hold);
      origins.of(spring).ifPresent(o -> uses.add(new SpringUse(end, place, spring, o)));
    }
  }

  /** The member end and the hold. */
  String words() {
    return end + ", " + HOLDS.get(hold);
  }

  Bound bound() {
    return origin.bound();
  }
}
