package spanledger.resistance.adm;

import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MomentFactors;
import spanledger.resistance.member.Working;

/** What lateral buckling takes from the moments at hand and the moment factors of a case. */
public final class LateralGivens {

  private LateralGivens() {}

  /**
   * Feeds M_y, M_y_max, M_y_A, M_y_B, M_y_C, C_b_dec, load, z_g, P_e_z, K_T.
   *
   * @param elastic a row of {@link ElasticLateralBuckling}
   */
  public static Working.Feeding feed(Working.Feeding row, MemberCase member, Working elastic) {
    return row.atCut(
            Effect.M_Y,
            Effect.M_Y_MAX,
            Effect.M_Y_QUARTER,
            Effect.M_Y_MIDDLE,
            Effect.M_Y_THREE_QUARTERS)
        .given("C_b_dec", declaredFactor(member))
        .given("load", loadBetween(member))
        .given("z_g", loadHeight(member))
        .from(elastic, "P_e_z", "P_e_z")
        .from(elastic, "K_T", "K_T");
  }

  /** C_b as declared, 0 if it follows from the moments. */
  private static Figured declaredFactor(MemberCase member) {
    MomentFactors factors = member.moments();
    return new Figured(factors.cb(), "C_b: " + factors.reason(), factors.source());
  }

  /** Whether loads act between restraints: where their height is given. */
  private static Figured loadBetween(MemberCase member) {
    MomentFactors factors = member.moments();
    boolean between = factors.loadHeight() != 0 || factors.c2() != 0;
    return new Figured(
        between ? 1 : 0, "loads between restraints: " + factors.reason(), factors.source());
  }

  /** Height of the load above the shear centre. */
  private static Figured loadHeight(MemberCase member) {
    MomentFactors factors = member.moments();
    return new Figured(factors.loadHeight(), "load height: " + factors.reason(), factors.source());
  }
}
