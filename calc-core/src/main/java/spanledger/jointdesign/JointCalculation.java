package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import spanledger.envelope.Instance;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointAxis;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.FaceMovement;
import spanledger.joint.sharing.SharedForces;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Works out one joint: from the forces at the member end to the uses of all its parts. */
final class JointCalculation {

  private static final CompiledProcedure END = EndForcesOnJoint.PROCEDURE.compile();
  private static final CompiledProcedure FACE = ForcesOnFace.PROCEDURE.compile();
  private static final Effect[] FORCES = {
    Effect.N, Effect.V_Y, Effect.V_Z, Effect.T, Effect.M_Y, Effect.M_Z
  };

  /** How a face marks the axes of the joint: square to it, its first, its second. */
  static final List<String> MARKS = List.of("n", "a", "b");

  private final JointCode code;
  private final JointEnd end;
  private final BracketJoint joint;
  private final SharedBrackets shared;
  private final SharingBound bound;
  private final Map<String, FaceGeometry> bodies = new HashMap<>();

  /**
   * @param shared the brackets of the joint
   * @param bound how they are taken to share
   */
  JointCalculation(
      JointCode code, JointEnd end, BracketJoint joint, SharedBrackets shared, SharingBound bound) {
    this.code = code;
    this.end = end;
    this.joint = joint;
    this.shared = shared;
    this.bound = bound;
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
    if (!joint.isShared()) {
      for (JointFace face : joint.faces()) {
        faces.add(face(new Carried(face, onJoint, 0, Optional.empty()), state));
      }
      return new JointRun(end, joint, instance, onJoint, faces);
    }
    List<BracketRun> brackets = shared.share(end.name(), onJoint, bound);
    double floor = shared.rounding(values(onJoint), bound);
    for (int i = 0; i < brackets.size(); i++) {
      BracketRun own = brackets.get(i);
      List<JointFace> itsFaces = joint.brackets().get(i).faces();
      for (int j = 0; j < itsFaces.size(); j++) {
        Optional<Working> moves = Optional.of(own.moves().get(j));
        faces.add(face(new Carried(itsFaces.get(j), own.share(), floor, moves), state));
      }
    }
    return new JointRun(end, joint, instance, onJoint, faces, bound, brackets);
  }

  private static double[] values(Working onJoint) {
    return SharedBrackets.FORCES.stream().mapToDouble(onJoint::value).toArray();
  }

  /**
   * A face and what it carries.
   *
   * @param by the run that has the forces of the member end, or of its bracket
   * @param floor the force that is rounding, N
   * @param moves the run that has its movement, of a bracket that shares
   */
  private record Carried(JointFace face, Working by, double floor, Optional<Working> moves) {}

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
    List<JointSolver> solvers = new ArrayList<>();
    if (joint.isShared()) {
      solvers.add(shared.solver(end.name(), run.forces(), bound));
    }
    for (int i = 0; i < run.faces().size(); i++) {
      solvers.add(solver(joint.faces().get(i), run.faces().get(i).forces(), run.forces()));
    }
    return new JointReplay(symbol -> atEnd(end, symbol), solvers);
  }

  private JointSolver solver(JointFace face, Working onFace, Working onJoint) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < JointSolver.FORCES.size(); i++) {
      names.add(FaceSharing.moved(where(face), i));
    }
    List<Feed.Result> given = new ArrayList<>(JointSolver.of(onFace, JointSolver.FORCES));
    given.addAll(JointSolver.of(onJoint, SharedBrackets.FORCES));
    BiFunction<FaceForces, Double, FaceMovement> moving = sharing(face, Optional.empty()).moving();
    return new JointSolver(
        names,
        given,
        all -> {
          FaceForces forces = new FaceForces(all[0], all[1], all[2], all[3], all[4], all[5]);
          double[] ofEnd = Arrays.copyOfRange(all, all.length / 2, all.length);
          double floor = joint.isShared() ? shared.rounding(ofEnd, bound) : 0;
          return FaceSharing.values(moving.apply(forces, floor));
        });
  }

  private String where(JointFace face) {
    return end.name() + ", " + face.name();
  }

  private FaceSharing sharing(JointFace face, Optional<Working> moves) {
    FaceGeometry body = body(face);
    return new FaceSharing(where(face), body.geometry(), body.springs(), source(face), moves);
  }

  private FaceGeometry body(JointFace face) {
    return bodies.computeIfAbsent(where(face), w -> FaceGeometry.of(face, w, source(face)));
  }

  private Source source(JointFace face) {
    return joint.bracketOf(face).source();
  }

  private FaceRun face(Carried carried, JointState state) {
    JointFace face = carried.face();
    String where = where(face);
    Working forces = onFace(face, source(face), carried.by(), where);
    FaceSharing sharing = sharing(face, carried.moves());
    SharedForces shared = sharing.share(FaceSharing.forces(forces), carried.floor());
    List<Working> shears = sharing.shears(forces, shared.movement());
    List<Working> tensions = sharing.tensions(shared.movement());
    List<Working> demands = sharing.demands(shears, tensions);
    List<Working> keys = sharing.keys(shared.movement());
    List<Working> contacts = sharing.contacts(shared.movement());
    FaceChecks checks = new FaceChecks(code, face, where, source(face));
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
      if (face.leg().isEmpty() && joint.bracketOf(face).isAngle()) {
        checks.legUnknown();
      }
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
                new PriedLeg(face, line, source(face), body(face).geometry(), tensions, contacts));
  }

  /** The forces on a face of what carries those of the member end. */
  static Working onFace(JointFace face, Source source, Working carried, String where) {
    Working.Feeding run = Working.of(FACE, where);
    place(run, face, where, source);
    JointAxis[] axes = axes(face);
    for (int i = 0; i < axes.length; i++) {
      String letter = axes[i].letter();
      run.from(carried, "P_" + MARKS.get(i), "P_" + letter)
          .from(carried, "C_" + MARKS.get(i), "C_" + letter);
    }
    return run.run();
  }

  /** Feeds where a face is and which way it looks: s_n, o_n, o_a, o_b. */
  static void place(Working.Feeding run, JointFace face, String where, Source source) {
    run.given("s_n", face.normal().sign(), where + ", which way it looks", source);
    JointAxis[] axes = axes(face);
    for (int i = 0; i < axes.length; i++) {
      run.given(
          "o_" + MARKS.get(i),
          face.origin().dot(axes[i].direction()),
          where + ", origin along " + axes[i].letter(),
          source);
    }
  }

  /** The axes of the joint square to a face, and along its first and second. */
  static JointAxis[] axes(JointFace face) {
    return new JointAxis[] {face.normal().axis(), face.first(), face.second()};
  }
}
