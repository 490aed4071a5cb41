package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.joint.Bracket;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointAxis;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.BracketShares;
import spanledger.joint.sharing.BracketSharing;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.FaceMovement;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Working;

/** Shares the forces of a member end between the brackets of its joint, run by run. */
final class SharedBrackets {

  private static final CompiledProcedure SHARE = BracketShare.PROCEDURE.compile();
  private static final CompiledProcedure MOVES = FaceMoves.PROCEDURE.compile();

  /** The forces of a member end, and what is left of each. */
  static final List<String> FORCES = List.of("P_u", "P_v", "P_w", "C_u", "C_v", "C_w");

  private static final List<String> LEFT = List.of("R_u", "R_v", "R_w", "L_u", "L_v", "L_w");
  private static final List<String> MOVEMENTS = List.of("u_x", "u_y", "u_z", "φ_x", "φ_y", "φ_z");

  /** Of the greatest force of the member end: less is rounding in what a bracket carries. */
  private static final double ROUNDING = 1e-10;

  private static final String BEFORE = "the first face of a bracket moves against what holds it";

  private final BracketJoint joint;
  private Optional<BracketSprings> springs = Optional.empty();

  SharedBrackets(BracketJoint joint) {
    this.joint = joint;
  }

  private BracketSprings springs() {
    if (springs.isEmpty()) {
      springs = Optional.of(new BracketSprings(joint));
    }
    return springs.get();
  }

  /**
   * Shares.
   *
   * @param end the member end, in words
   * @param onJoint a run of {@link EndForcesOnJoint}
   * @throws spanledger.joint.sharing.UnresistedFaceException if nothing resists one of the forces
   * @throws IllegalArgumentException if a bolt lies where its leg cannot bend
   */
  List<BracketRun> share(String end, Working onJoint, SharingBound bound) {
    double[] six = new double[FORCES.size()];
    for (int i = 0; i < six.length; i++) {
      six[i] = onJoint.value(FORCES.get(i));
    }
    BracketShares shares = shares(six, bound);
    List<BracketRun> runs = new ArrayList<>();
    Optional<Working> before = Optional.empty();
    for (int i = 0; i < joint.brackets().size(); i++) {
      Bracket bracket = joint.brackets().get(i);
      Working share = share(end + ", " + bracket.name(), onJoint, before, shares.brackets().get(i));
      runs.add(moves(end, bracket, i, bound, shares.faces().get(i), share));
      before = Optional.of(share);
    }
    return runs;
  }

  /** What shares the forces of a run of {@link EndForcesOnJoint} anew. */
  JointSolver solver(String end, Working onJoint, SharingBound bound) {
    List<String> names = new ArrayList<>();
    for (Bracket bracket : joint.brackets()) {
      FORCES.forEach(symbol -> names.add(shared(end + ", " + bracket.name(), symbol)));
      for (JointFace face : bracket.faces()) {
        MOVEMENTS.forEach(symbol -> names.add(moved(end + ", " + face.name(), symbol)));
      }
    }
    return new JointSolver(
        names, JointSolver.of(onJoint, FORCES), forces -> numbers(shares(forces, bound)));
  }

  private static double[] numbers(BracketShares shares) {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < shares.brackets().size(); i++) {
      for (double share : six(shares.brackets().get(i))) {
        all.add(share);
      }
      for (FaceMovement movement : shares.faces().get(i)) {
        for (double move : FaceSharing.values(movement)) {
          all.add(move);
        }
      }
    }
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private BracketShares shares(double[] forces, SharingBound bound) {
    BracketSharing sharing = springs().sharing(bound);
    return sharing.share(FaceSharing.whole(forces(forces), sharing.reach()));
  }

  /**
   * The greatest force that is rounding in what a bracket carries, N.
   *
   * @param forces P_u, P_v, P_w, C_u, C_v, C_w of the member end
   */
  double rounding(double[] forces, SharingBound bound) {
    return ROUNDING * forces(forces).greatest(springs().sharing(bound).reach());
  }

  private static FaceForces forces(double[] six) {
    return new FaceForces(six[0], six[1], six[2], six[3], six[4], six[5]);
  }

  private static double[] six(FaceForces forces) {
    return new double[] {
      forces.axial(),
      forces.shearY(),
      forces.shearZ(),
      forces.torsion(),
      forces.momentY(),
      forces.momentZ()
    };
  }

  private static String shared(String bracket, String symbol) {
    return bracket + ", share " + symbol;
  }

  private static String moved(String face, String symbol) {
    return face + ", movement of the bracket there " + symbol;
  }

  private static Working share(
      String name, Working onJoint, Optional<Working> before, FaceForces share) {
    Working.Feeding run = Working.of(SHARE, name);
    for (int i = 0; i < FORCES.size(); i++) {
      String symbol = FORCES.get(i);
      String left = LEFT.get(i);
      if (before.isPresent()) {
        run.from(before.get(), left + "0", left);
      } else {
        run.from(onJoint, left + "0", symbol);
      }
      run.given(symbol, six(share)[i], shared(name, symbol), JointFeeds.SOLVED);
    }
    return run.run();
  }

  private BracketRun moves(
      String end,
      Bracket bracket,
      int index,
      SharingBound bound,
      List<FaceMovement> movements,
      Working share) {
    List<Working> moves = new ArrayList<>();
    Map<JointAxis, String> marks = new EnumMap<>(JointAxis.class);
    for (int i = 0; i < movements.size(); i++) {
      JointFace face = bracket.faces().get(i);
      String where = end + ", " + face.name();
      double[] move = FaceSharing.values(movements.get(i));
      Working.Feeding run = Working.of(MOVES, where);
      for (int k = 0; k < move.length; k++) {
        String symbol = MOVEMENTS.get(k);
        run.given(symbol, move[k], moved(where, symbol), JointFeeds.SOLVED);
      }
      run.same(springs().inFace(index, i), "K_y", "K_z", "S_z", "S_y", "J")
          .given(
              "η_i",
              bound.softening().inFace(),
              bound.words() + ": springs in the face divided by",
              JointStiffness.MODIFICATION)
          .given(
              "η_o",
              bound.softening().offFace(),
              bound.words() + ": springs off the face divided by",
              JointStiffness.MODIFICATION);
      JointCalculation.place(run, face, where, bracket.source());
      JointAxis[] axes = JointCalculation.axes(face);
      for (int k = 0; k < axes.length; k++) {
        String mark = JointCalculation.MARKS.get(k);
        String before = marks.get(axes[k]);
        if (before == null) {
          run.given("v_" + mark + "0", 0, BEFORE, JointFeeds.NOTHING_BEFORE)
              .given("ψ_" + mark + "0", 0, BEFORE, JointFeeds.NOTHING_BEFORE);
        } else {
          Working last = moves.get(i - 1);
          run.from(last, "v_" + mark + "0", "v_" + before)
              .from(last, "ψ_" + mark + "0", "ψ_" + before);
        }
      }
      for (int k = 0; k < axes.length; k++) {
        marks.put(axes[k], JointCalculation.MARKS.get(k));
      }
      moves.add(run.run());
    }
    List<String> steps = new ArrayList<>();
    for (String what : List.of("v_", "ψ_")) {
      for (JointAxis axis : JointAxis.values()) {
        steps.add(what + marks.get(axis));
      }
    }
    return new BracketRun(bracket.name(), share, moves, steps);
  }
}
