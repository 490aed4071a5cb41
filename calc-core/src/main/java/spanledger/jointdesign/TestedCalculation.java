package spanledger.jointdesign;

import java.util.List;
import java.util.Optional;
import spanledger.envelope.Instance;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** Sets the moment of a member end beside what tests of its joint resist. */
final class TestedCalculation {

  private static final CompiledProcedure FACE = ForcesOnFace.PROCEDURE.compile();
  private static final CompiledProcedure MOMENT = TestedMoment.PROCEDURE.compile();

  private final TestedEnd tested;

  TestedCalculation(TestedEnd tested) {
    this.tested = tested;
  }

  /**
   * What must be added before the moment can be judged; empty if nothing.
   *
   * @return in words
   */
  Optional<String> open() {
    return tested.tests().partialFactor().isPresent()
        ? Optional.empty()
        : Optional.of(
            "the moment of "
                + tested.turn().words()
                + " against "
                + tested.tests().joint().name()
                + " is not judged: the job does not say by which partial factor the"
                + " characteristic moment of the tests is divided; add \"partialFactor\" with a"
                + " value and its source beside \"tests\"");
  }

  /**
   * Works it out.
   *
   * @param forces N, V_y, V_z, T, M_y, M_z at the member end
   */
  JointRun run(Instance instance, double[] forces) {
    JointTests tests = tested.tests();
    Working onJoint = JointCalculation.onJoint(tested.end(), tests.joint().source(), forces);
    String where = tested.end().name() + ", " + tested.turn().words();
    Figured factor = tests.partialFactor().orElseThrow();
    Working moment =
        Working.of(MOMENT, where)
            .from(onJoint, "M", tested.turn().moment())
            .given("M_k", tests.characteristic(), tests.moment().label(), JointFeeds.TESTED)
            .given("γ_M", factor)
            .run();
    JointCheck check =
        new JointCheck(
            moment,
            List.of(
                new JointUse(
                    "η", "moment that the tests resist", TestedMoment.CLAUSE, "M_Ed", "M_Rd")));
    Working onFace = onFace(onJoint, where);
    FaceRun face = FaceRun.unshared(tested.turn().words(), onFace, List.of(check), List.of());
    return new JointRun(tested.end(), tests.joint(), instance, onJoint, List.of(face));
  }

  /** The member end itself, square to the member. */
  private Working onFace(Working onJoint, String where) {
    Working.Feeding run =
        Working.of(FACE, where)
            .given("s_n", 1, where + ", square to the member", tested.tests().joint().source());
    String[] axes = {"u", "v", "w"};
    String[] marks = {"n", "a", "b"};
    for (int i = 0; i < axes.length; i++) {
      run.from(onJoint, "P_" + marks[i], "P_" + axes[i])
          .from(onJoint, "C_" + marks[i], "C_" + axes[i])
          .given(
              "o_" + marks[i], 0, where + ", at the member end", tested.tests().joint().source());
    }
    return run.run();
  }
}
