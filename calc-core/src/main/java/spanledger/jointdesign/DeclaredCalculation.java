package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Vector;
import spanledger.joint.DeclaredFoot;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Working;

/** Works out a bought-in foot: demand beside declared capacities. */
final class DeclaredCalculation implements FootCalculation.Face {

  private static final CompiledProcedure DEMAND = DeclaredDemand.PROCEDURE.compile();

  /** Moments below this arm of the forces are rounding, mm. */
  private static final double NO_ARM = 1e-3;

  private static final Source NONE = Source.derived("1 N stands for no capacity");

  private final DeclaredFoot foot;
  private final String where;

  /**
   * @param where the foot, in words
   */
  DeclaredCalculation(DeclaredFoot foot, String where) {
    this.foot = foot;
    this.where = where;
  }

  @Override
  public FaceRun run(Working onFoot) {
    Working onGround = FootCalculation.about(Vector.ZERO, onFoot, where, foot.source());
    List<JointCheck> checks = new ArrayList<>();
    List<String> open = new ArrayList<>();
    boolean sheared = foot.shear().isPresent();
    boolean holds = foot.tension() > 0;
    Working demand =
        Working.of(DEMAND, where)
            .same(onGround, "N", "V_y", "V_z")
            .given("N_c", foot.compression(), where + ", declared compression", foot.source())
            .given(
                "N_t",
                holds ? foot.tension() : 1,
                where + ", declared tension",
                holds ? foot.source() : NONE)
            .given("i_v", sheared ? 1 : 0, where + ", whether shear is declared", foot.source())
            .given(
                "V_r",
                foot.shear().orElse(1.0),
                where + ", declared shear",
                sheared ? foot.source() : NONE)
            .run();
    checks.add(
        new JointCheck(
            demand,
            List.of(
                new JointUse(
                    "η_d",
                    "foot beside its declared capacities",
                    DeclaredDemand.CLAUSE,
                    "sum",
                    "sum_Rd"))));
    if (!sheared) {
      FootOnGround.sliding(
          foot.friction(), onGround, where, "\"shear\" or \"friction\" to the foot", checks, open);
    }
    moments(onGround).ifPresent(open::add);
    return FaceRun.unshared("declared foot", onGround, checks, open);
  }

  private Optional<String> moments(Working onGround) {
    double force = 0;
    double moment = 0;
    for (String symbol : List.of("N", "V_y", "V_z")) {
      force = Math.max(force, Math.abs(onGround.value(symbol)));
    }
    for (String symbol : List.of("T", "M_y", "M_z")) {
      moment = Math.max(moment, Math.abs(onGround.value(symbol)));
    }
    return moment <= NO_ARM * force
        ? Optional.empty()
        : Optional.of(
            where
                + ": its support hands moments on to it, but only forces are declared of it; let"
                + " its support turn, or describe it otherwise");
  }
}
