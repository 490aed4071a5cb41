package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.envelope.Instance;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointAxis;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.SharedForces;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Working;

/** Works out one joint: from the forces at the member end to the uses of all its parts. */
final class JointCalculation {

  private static final CompiledProcedure END = EndForcesOnJoint.PROCEDURE.compile();
  private static final CompiledProcedure FACE = ForcesOnFace.PROCEDURE.compile();
  private static final Effect[] FORCES = {
    Effect.N, Effect.V_Y, Effect.V_Z, Effect.T, Effect.M_Y, Effect.M_Z
  };

  private final JointCode code;
  private final JointEnd end;
  private final BracketJoint joint;
  private final Map<String, FaceGeometry> bodies = new HashMap<>();

  JointCalculation(JointCode code, JointEnd end, BracketJoint joint) {
    this.code = code;
    this.end = end;
    this.joint = joint;
  }

  /**
   * Works it out.
   *
   * @param forces N, V_y, V_z, T, M_y, M_z at the member end
   * @throws spanledger.joint.sharing.UnresistedFaceException if nothing at a face resists a force
   */
  JointRun run(Instance instance, double[] forces) {
    return run(instance, forces, JointState.ULTIMATE);
  }

  /** Works out what must hold under loads of use; forces and errors as of {@link #run}. */
  JointRun runInUse(Instance instance, double[] forces) {
    return run(instance, forces, JointState.SERVICE);
  }

  /** Whether anything must hold under loads of use. */
  static boolean isHeldInUse(BracketJoint joint) {
    return joint.faces().stream().anyMatch(FaceSlip::isHeldInUse);
  }

  private JointRun run(Instance instance, double[] forces, JointState state) {
    Working onJoint = onJoint(end, joint.source(), forces);
    List<FaceRun> faces = new ArrayList<>();
    for (JointFace face : joint.faces()) {
      faces.add(face(face, onJoint, state));
    }
    return new JointRun(end, joint, instance, onJoint, faces);
  }

  /** What a member end puts on its joint. */
  static Working onJoint(JointEnd end, Source source, double[] forces) {
    String name = end.name();
    Working.Feeding feeding =
        Working.of(END, name).given("s", end.start() ? 1 : -1, name + ", which end", source);
    for (int i = 0; i < FORCES.length; i++) {
      String symbol = FORCES[i].symbol();
      feeding.given(symbol, forces[i], atEnd(end, symbol), JointFeeds.AT_END);
    }
    return feeding.run();
  }

  private static String atEnd(JointEnd end, String symbol) {
    return end.name() + ", " + symbol;
  }

  /**
   * What works out a run of this joint again for other forces.
   *
   * @throws UnsupportedOperationException if it cannot
   */
  JointReplay replay(JointRun run) {
    List<SolvedFace> solved = new ArrayList<>();
    for (int i = 0; i < run.faces().size(); i++) {
      JointFace face = joint.faces().get(i);
      solved.add(new SolvedFace(where(face), run.faces().get(i).forces(), sharing(face).moving()));
    }
    return new JointReplay(symbol -> atEnd(end, symbol), solved);
  }

  private String where(JointFace face) {
    return end.name() + ", " + face.name();
  }

  private FaceSharing sharing(JointFace face) {
    FaceGeometry body = body(face);
    return new FaceSharing(where(face), body.geometry(), body.springs(), joint.source());
  }

  private FaceGeometry body(JointFace face) {
    return bodies.computeIfAbsent(where(face), w -> FaceGeometry.of(face, w, joint.source()));
  }

  private FaceRun face(JointFace face, Working onJoint, JointState state) {
    String where = where(face);
    Working forces = onFace(face, onJoint, where);
    FaceSharing sharing = sharing(face);
    SharedForces shared = sharing.share(forces);
    List<Working> shears = sharing.shears(forces, shared.movement());
    List<Working> tensions = sharing.tensions(shared.movement());
    List<Working> demands = sharing.demands(shears, tensions);
    List<Working> keys = sharing.keys(shared.movement());
    List<Working> contacts = sharing.contacts(shared.movement());
    FaceChecks checks = new FaceChecks(code, face, where, joint.source());
    if (state == JointState.SERVICE) {
      checks.inUse(demands);
    } else {
      checks.all(
          forces,
          demands,
          keys,
          pried(face, tensions, contacts),
          body(face).geometry().contacts(),
          contacts);
    }
    return new FaceRun(
        face.name(),
        forces,
        shared,
        shears,
        tensions,
        keys,
        contacts,
        demands,
        checks.checks(),
        checks.open());
  }

  private Optional<PriedLeg> pried(JointFace face, List<Working> tensions, List<Working> contacts) {
    return face.leg()
        .map(
            line ->
                new PriedLeg(
                    face, line, joint.source(), body(face).geometry(), tensions, contacts));
  }

  private Working onFace(JointFace face, Working onJoint, String where) {
    JointAxis normal = face.normal().axis();
    Working.Feeding run =
        Working.of(FACE, where)
            .given("s_n", face.normal().sign(), where + ", which way it looks", joint.source());
    JointAxis[] axes = {normal, face.first(), face.second()};
    String[] marks = {"n", "a", "b"};
    for (int i = 0; i < axes.length; i++) {
      String letter = axes[i].letter();
      run.from(onJoint, "P_" + marks[i], "P_" + letter)
          .from(onJoint, "C_" + marks[i], "C_" + letter)
          .given(
              "o_" + marks[i],
              along(face, axes[i]),
              where + ", origin along " + letter,
              joint.source());
    }
    return run.run();
  }

  private static double along(JointFace face, JointAxis axis) {
    return switch (axis) {
      case U -> face.origin().x();
      case V -> face.origin().y();
      case W -> face.origin().z();
    };
  }
}
