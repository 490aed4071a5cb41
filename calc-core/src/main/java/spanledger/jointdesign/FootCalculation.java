package spanledger.jointdesign;

import java.util.List;
import spanledger.analysis.Reaction;
import spanledger.envelope.Instance;
import spanledger.frame.Vector;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.ClampFoot;
import spanledger.joint.DeclaredFoot;
import spanledger.joint.FootLie;
import spanledger.joint.FootType;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.member.Working;

/** Works out one foot: from what its support does to the structure to the uses of its parts. */
final class FootCalculation {

  private static final CompiledProcedure FORCES = FootForces.PROCEDURE.compile();
  private static final CompiledProcedure FACE = ForcesOnFace.PROCEDURE.compile();

  private static final Source LIE = Source.declared("job file, feet of jointChecks");

  private final FootPlace place;
  private final FootType foot;
  private final FootLie lie;
  private final Face face;

  /** Works out what is between the foot's node and the ground. */
  interface Face {

    /**
     * Works it out.
     *
     * @param onFoot a run of {@link FootForces}
     * @throws IllegalArgumentException if nothing resists one of the forces
     */
    FaceRun run(Working onFoot);
  }

  private FootCalculation(FootPlace place, FootType foot, FootLie lie, Face face) {
    this.place = place;
    this.foot = foot;
    this.lie = lie;
    this.face = face;
  }

  /**
   * Prepares a foot.
   *
   * @throws IllegalArgumentException if what stands on it does not suit it, in words for the user
   */
  static FootCalculation of(
      JointCode code, FootPlace place, FootPlacing placing, StandingOn standing) {
    FootType foot = placing.foot();
    String where = place.name() + ", " + foot.name();
    if (foot instanceof BasePlateFoot plate) {
      return new FootCalculation(
          place, foot, placing.lie(), new BasePlateCalculation(code, plate, where));
    }
    if (foot instanceof DeclaredFoot declared) {
      return new FootCalculation(
          place, foot, placing.lie(), new DeclaredCalculation(declared, where));
    }
    // Of a clamp only the force along its post counts, however the ground lies.
    return new FootCalculation(
        place,
        foot,
        FootLie.LEVEL,
        new ClampCalculation(code, (ClampFoot) foot, standing.postAxis(), where));
  }

  /** R_X, R_Y, R_Z, S_X, S_Y, S_Z of {@link FootForces}. */
  static double[] forces(Reaction reaction) {
    return new double[] {
      reaction.force().x(),
      reaction.force().y(),
      reaction.force().z(),
      reaction.moment().x(),
      reaction.moment().y(),
      reaction.moment().z()
    };
  }

  /**
   * Works it out.
   *
   * @param forces R_X, R_Y, R_Z, S_X, S_Y, S_Z: what the support does to the structure
   * @throws IllegalArgumentException if nothing resists one of the forces
   */
  JointRun run(Instance instance, double[] forces) {
    String where = place.name() + ", " + foot.name();
    Working.Feeding feeding =
        Working.of(FORCES, place.name())
            .given("ψ", lie.turn(), where + ", turn", LIE)
            .given("α", lie.slope(), where + ", slope of the ground", LIE)
            .given("δ", lie.falls(), where + ", direction in which the ground falls", LIE);
    for (int i = 0; i < forces.length; i++) {
      String symbol = FootForces.OF_SUPPORT.get(i);
      feeding.given(symbol, forces[i], place.name() + ", " + symbol, JointFeeds.AT_SUPPORT);
    }
    Working onFoot = feeding.run();
    return new JointRun(place, foot, instance, onFoot, List.of(face.run(onFoot)));
  }

  /** The forces about a point, along the axes of the foot. */
  static Working about(Vector point, Working onFoot, String where, Source source) {
    return Working.of(FACE, where)
        .given("s_n", 1, where + ", which way it looks", source)
        .from(onFoot, "P_n", "P_u")
        .from(onFoot, "P_a", "P_v")
        .from(onFoot, "P_b", "P_w")
        .from(onFoot, "C_n", "C_u")
        .from(onFoot, "C_a", "C_v")
        .from(onFoot, "C_b", "C_w")
        .given("o_n", point.z(), where + ", its middle above the node", source)
        .given("o_a", point.x(), where + ", its middle along its first side", source)
        .given("o_b", point.y(), where + ", its middle along its second side", source)
        .run();
  }
}
