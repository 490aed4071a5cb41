package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import spanledger.joint.Bracket;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointAxis;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.UnresistedFaceException;
import spanledger.joint.stiffness.FaceSpring;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * How the springs of a described joint come of its parts, run by run: the parts of each face, how
 * its faces and the member end move under a unit of each force, and the stiffness. The numbers are
 * those of {@link DescribedStiffness}.
 *
 * @param joint the joint
 * @param cases the joint under units of force
 * @param springs for each hold of a member end (axial, torsion, about y, about z) the run that ends
 *     in k_low and k_high; none where nothing resists
 */
public record StiffnessDerivation(
    BracketJoint joint, List<UnitCase> cases, List<Optional<Working>> springs) {

  private static final CompiledProcedure END = EndForcesOnJoint.PROCEDURE.compile();
  private static final Source UNIT = Source.derived("a unit of one force, no other");
  private static final Effect[] FORCES = {
    Effect.N, Effect.V_Y, Effect.V_Z, Effect.T, Effect.M_Y, Effect.M_Z
  };

  /** The holds of a member end: the place of their force among the six. */
  private static final int[] HOLDS = {0, 3, 4, 5};

  private static final List<String> HELD = List.of("along u", "about u", "about v", "about w");

  /**
   * The joint under a unit of one force.
   *
   * @param name of the case
   * @param onJoint the unit, a run of {@link EndForcesOnJoint}
   * @param brackets what each bracket carries, and how its faces and the member end move
   * @param faces what each face carries, face by face
   */
  public record UnitCase(
      String name, Working onJoint, List<BracketRun> brackets, List<FaceCarries> faces) {

    public UnitCase {
      brackets = List.copyOf(brackets);
      faces = List.copyOf(faces);
    }
  }

  /**
   * A face under a unit of one force.
   *
   * @param forces a run of {@link ForcesOnFace}
   * @param moves a run of {@link FaceMoves}, which has what its springs carry in the face
   * @param parts what bolts and pieces of the bed carry off the face
   */
  public record FaceCarries(Working forces, Working moves, List<Working> parts) {

    public FaceCarries {
      parts = List.copyOf(parts);
    }
  }

  public StiffnessDerivation {
    cases = List.copyOf(cases);
    springs = List.copyOf(springs);
  }

  /**
   * Derives the springs of a joint.
   *
   * @throws IllegalArgumentException if a bolt lies where its leg cannot bend
   */
  public static StiffnessDerivation of(BracketJoint joint) {
    List<UnitCase> cases = new ArrayList<>();
    List<Optional<Working>> springs = new ArrayList<>();
    SharedBrackets shared = new SharedBrackets(joint);
    Map<JointFace, FaceGeometry> bodies = new LinkedHashMap<>();
    for (Bracket bracket : joint.brackets()) {
      for (JointFace face : bracket.faces()) {
        bodies.put(
            face, FaceGeometry.of(face, joint.name() + ", " + face.name(), bracket.source()));
      }
    }
    for (int hold = 0; hold < HOLDS.length; hold++) {
      try {
        UnitCase one = unit(joint, shared, bodies, hold, 1);
        UnitCase other = unit(joint, shared, bodies, hold, -1);
        cases.add(one);
        cases.add(other);
        CompiledProcedure procedure = (hold == 0 ? FaceSpring.ALONG : FaceSpring.ABOUT).compile();
        springs.add(
            Optional.of(
                Working.of(procedure, joint.name() + ", " + HELD.get(hold))
                    .with("d_p", moved(one, hold))
                    .with("d_n", moved(other, hold))
                    .given(
                        "η",
                        JointStiffness.OTHER,
                        "modification of stiffness",
                        JointStiffness.MODIFICATION)
                    .run()));
      } catch (UnresistedFaceException unresisted) {
        springs.add(Optional.empty());
      }
    }
    return new StiffnessDerivation(joint, cases, springs);
  }

  /** The movement of the member end that answers the unit. */
  private static Feed moved(UnitCase one, int hold) {
    BracketRun first = one.brackets().get(0);
    return hold == 0
        ? first.shift(JointAxis.U)
        : first.turn(List.of(JointAxis.U, JointAxis.V, JointAxis.W).get(hold - 1));
  }

  private static UnitCase unit(
      BracketJoint joint,
      SharedBrackets shared,
      Map<JointFace, FaceGeometry> bodies,
      int hold,
      int sense) {
    String name = joint.name() + ", unit " + HELD.get(hold) + (sense > 0 ? "" : ", backwards");
    Working.Feeding end = Working.of(END, name).given("s", 1, name + ", joint's axes", UNIT);
    for (int i = 0; i < FORCES.length; i++) {
      String symbol = FORCES[i].symbol();
      end.given(symbol, i == HOLDS[hold] ? sense : 0, name + ", " + symbol, UNIT);
    }
    Working onJoint = end.run();
    List<BracketRun> brackets = shared.share(name, onJoint, SharingBound.ALONE);
    List<FaceCarries> faces = new ArrayList<>();
    for (int i = 0; i < brackets.size(); i++) {
      Bracket bracket = joint.brackets().get(i);
      for (int j = 0; j < bracket.faces().size(); j++) {
        JointFace face = bracket.faces().get(j);
        FaceGeometry body = Objects.requireNonNull(bodies.get(face));
        // A bracket alone carries all.
        Working by = joint.isShared() ? brackets.get(i).share() : onJoint;
        faces.add(carries(name, bracket, face, body, brackets.get(i).moves().get(j), by));
      }
    }
    return new UnitCase(name, onJoint, brackets, faces);
  }

  private static FaceCarries carries(
      String name, Bracket bracket, JointFace face, FaceGeometry body, Working moves, Working by) {
    String where = name + ", " + face.name();
    FaceSharing sharing =
        new FaceSharing(
            where, body.geometry(), body.springs(), bracket.source(), Optional.of(moves));
    List<Working> parts = new ArrayList<>(sharing.tensions(FaceSharing.still()));
    parts.addAll(sharing.contacts(FaceSharing.still()));
    return new FaceCarries(
        JointCalculation.onFace(face, bracket.source(), by, where), moves, parts);
  }
}
