package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Vector;
import spanledger.joint.ClampFoot;
import spanledger.joint.Tightening;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.Friction;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.Preload;
import spanledger.resistance.joint.SlipFaces;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Works out a clamp foot: whether its post slips through it. */
final class ClampCalculation implements FootCalculation.Face {

  private static final CompiledProcedure CLAMP = ClampDemand.PROCEDURE.compile();
  private static final Source AXIS = Source.derived("Direction between the nodes of the post");

  private final JointCode code;
  private final ClampFoot clamp;
  private final Vector axis;
  private final String where;

  /**
   * @param axis of the post, global, of length 1
   * @param where the foot, in words
   */
  ClampCalculation(JointCode code, ClampFoot clamp, Vector axis, String where) {
    this.code = code;
    this.clamp = clamp;
    this.axis = axis;
    this.where = where;
  }

  @Override
  public FaceRun run(Working onFoot) {
    Working demand =
        Working.of(CLAMP, where)
            .same(onFoot, "P_u", "P_v", "P_w")
            .given("c_u", axis.z(), where + ", post along Z", AXIS)
            .given("c_v", axis.x(), where + ", post along X", AXIS)
            .given("c_w", axis.y(), where + ", post along Y", AXIS)
            .run();
    Bolt bolt = new Bolt(clamp.size(), clamp.grade(), false);
    List<JointCheck> checks = new ArrayList<>();
    Feed preload;
    if (clamp.tightening() instanceof Tightening.Torque torque) {
      JointCheck tightened = Preload.of(bolt, torque);
      checks.add(tightened);
      preload = tightened.feed("F_p_min");
    } else {
      Tightening.Preload known = (Tightening.Preload) clamp.tightening();
      preload = new Feed.Given(known.lower(), where + ", least preload", known.source());
    }
    checks.add(
        code.slip(
            new SlipFaces(
                where,
                clamp.bolts(),
                clamp.surfaces(),
                new Friction(clamp.friction().lower(), clamp.friction().source()),
                clamp.source()),
            JointState.ULTIMATE,
            preload,
            new Feed.Given(
                0,
                where + ", pull on the bolts from outside",
                Source.derived("The post pulls across the bolts, not along them")),
            demand.feed("F_a")));
    Working onGround = FootCalculation.about(Vector.ZERO, onFoot, where, clamp.source());
    return FaceRun.unshared("clamp", onGround, checks, List.of());
  }
}
