package spanledger.resistance.adm;

import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.Weld;

/** Which welds weaken a member against buckling as a whole. */
public final class AdmWelds {

  /** Welds across a member this near its end, per its length, do not weaken it against buckling. */
  private static final double NEAR_END = 0.05;

  private AdmWelds() {}

  /**
   * The softened area that counts for buckling of the member: all of it where a weld runs across
   * elsewhere than near the start. The end of the member is not known here, so a weld there counts,
   * which is on the safe side.
   */
  public static Figured ofMember(MemberCase member, SoftArea soft, MemberInputs inputs) {
    double least =
        member.lengths().values().stream().mapToDouble(BucklingLength::length).min().orElse(0);
    boolean across =
        member.welds().stream()
            .filter(Weld.Across.class::isInstance)
            .map(Weld.Across.class::cast)
            .anyMatch(weld -> weld.place() > NEAR_END * least);
    return across ? soft.anywhere(inputs) : soft.along(inputs);
  }
}
