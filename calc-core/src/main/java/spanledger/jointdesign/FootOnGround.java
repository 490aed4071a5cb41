package spanledger.jointdesign;

import java.util.List;
import java.util.Optional;
import spanledger.joint.FaceFriction;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Working;

/** Sliding of feet of several kinds where they meet the ground. */
final class FootOnGround {

  private static final CompiledProcedure SLIDING = FootSliding.PROCEDURE.compile();

  private FootOnGround() {}

  /** Sliding, held by friction alone; said to be open if there is none. */
  static void sliding(
      Optional<FaceFriction> friction,
      Working onGround,
      String where,
      String mend,
      List<JointCheck> checks,
      List<String> open) {
    if (friction.isEmpty()) {
      open.add(where + ": nothing that is described holds it against sliding; add " + mend);
      return;
    }
    Working sliding =
        Working.of(SLIDING, where)
            .same(onGround, "N", "V_y", "V_z")
            .given("μ", friction.get().lower(), where + ", friction", friction.get().source())
            .run();
    checks.add(
        new JointCheck(
            sliding,
            List.of(new JointUse("η_s", "sliding of the foot", FootSliding.CLAUSE, "H", "F_μ"))));
  }
}
