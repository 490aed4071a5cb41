package spanledger.analysis;

import java.util.Arrays;
import spanledger.procedure.CompiledProcedure;

/**
 * A segment under axial force, in one state of its joints. Mutable: joints and force are set, then
 * stiffness and end forces asked for. Not for several threads at once.
 *
 * <p>All numbers come from {@link BeamColumnStiffness}, {@link BeamColumnForces}, {@link
 * MeanAxialForce}, {@link ArmTilt} and the procedures of {@link SegmentModel}.
 */
public final class BeamColumnModel {

  /** Joints that may have play: start about y, start about z, end about y, end about z. */
  public static final int JOINTS = 4;

  private static final int ENDS = SegmentModel.ENDS;

  private static final CompiledProcedure STIFFNESS = BeamColumnStiffness.PROCEDURE.compile();
  private static final CompiledProcedure FORCES = BeamColumnForces.PROCEDURE.compile();
  private static final CompiledProcedure AXIAL = MeanAxialForce.PROCEDURE.compile();
  private static final SlotCopy SEGMENT_TO_STIFFNESS =
      SlotCopy.between(SegmentValues.STIFFNESS, STIFFNESS);
  private static final SlotCopy SEGMENT_TO_FORCES =
      SlotCopy.between(SegmentValues.STIFFNESS, FORCES);
  private static final SlotCopy STIFFNESS_TO_FORCES = SlotCopy.between(STIFFNESS, FORCES);

  private static final int FORCE = STIFFNESS.slot("N");
  private static final int[] RIGID = slots(STIFFNESS, "r_y1", "r_z1", "r_y2", "r_z2");
  private static final int[] SPRING = slots(STIFFNESS, "k_y1", "k_z1", "k_y2", "k_z2");
  private static final int KAPPA_Y = STIFFNESS.slot("κ_y");
  private static final int KAPPA_Z = STIFFNESS.slot("κ_z");
  private static final int[] BENDING =
      slots(STIFFNESS, "s_y11", "s_y12", "s_y22", "s_z11", "s_z12", "s_z22");
  private static final int[] FLEXIBILITY = slots(STIFFNESS, "f_y11", "f_y12", "f_z11", "f_z12");

  private static final int[] PLAY = slots(FORCES, "j_y1", "j_z1", "j_y2", "j_z2");
  private static final int MEAN_FORCE = FORCES.slot("N");
  private static final int MOVED_FORCE = FORCES.slot("N_m");
  private static final int TWIST = FORCES.slot("φ");
  private static final int[] TURNS = slots(FORCES, "θ_y1", "θ_y2", "θ_z1", "θ_z2");
  private static final int[] CHORD = slots(FORCES, "ψ_z", "ψ_y");
  private static final int[] LOAD_TURNS = slots(FORCES, "t_1y", "t_2y", "t_1z", "t_2z");
  private static final int[] LOAD_MOMENTS =
      slots(FORCES, "m_0x", "m_1x", "m_0y", "m_1y", "m_0z", "m_1z");
  private static final int[] FROM_MOMENTS = {0, 1, 2, 3, 6, 7};
  private static final int[] END =
      SegmentMatrices.END_FORCES.stream().mapToInt(FORCES::slot).toArray();
  private static final int[] FREE_TURNS = slots(FORCES, "θ0_y1", "θ0_z1", "θ0_y2", "θ0_z2");
  private static final int[] JOINT_TURNS = slots(FORCES, "θ_y1", "θ_z1", "θ_y2", "θ_z2");
  private static final int[] JOINT_MOMENTS = slots(FORCES, "M_y1", "M_z1", "M_y2", "M_z2");

  private static final int AXIAL_STIFFNESS = AXIAL.slot("s_a");
  private static final int STRETCH = AXIAL.slot("e");
  private static final int AXIAL_PLAY = AXIAL.slot("j_a");
  private static final int AXIAL_FORCE = AXIAL.slot("N");

  private final SegmentModel model;
  private final double[] stiffness = STIFFNESS.newSlots();
  private final double[] forces = FORCES.newSlots();
  private final double[] axial = AXIAL.newSlots();
  private final double twisting;
  private boolean stale = true;

  /** A segment with its joints as in its model, without axial force. */
  public BeamColumnModel(SegmentModel model) {
    this.model = model;
    model.copyStiffness(SEGMENT_TO_STIFFNESS, stiffness);
    model.copyStiffness(SEGMENT_TO_FORCES, forces);
    axial[AXIAL_STIFFNESS] = model.stiffnessValue("s_a");
    twisting = model.stiffnessValue("s_t");
  }

  private static int[] slots(CompiledProcedure procedure, String... symbols) {
    return Arrays.stream(symbols).mapToInt(procedure::slot).toArray();
  }

  /** The segment at rest. */
  public SegmentModel model() {
    return model;
  }

  /**
   * Sets how a joint holds.
   *
   * @param joint 0 to 3, see {@link #JOINTS}
   * @param holding its stiffness, N·mm/rad; infinite if rigid, 0 if loose
   * @param play the turn from which it holds, rad
   */
  public void setJoint(int joint, double holding, double play) {
    boolean rigid = Double.isInfinite(holding);
    stiffness[RIGID[joint]] = rigid ? 1 : 0;
    stiffness[SPRING[joint]] = rigid ? 0 : holding;
    forces[PLAY[joint]] = play;
    stale = true;
  }

  /**
   * Sets how the segment holds against stretching, its axial joints included.
   *
   * @param holding N/mm; 0 if slack
   * @param play the stretch from which it holds, mm
   */
  public void setAxial(double holding, double play) {
    axial[AXIAL_STIFFNESS] = holding;
    axial[AXIAL_PLAY] = play;
  }

  /** Sets the mean axial force for bending, N, tension positive. */
  public void setForce(double meanAxialForce) {
    if (stale || stiffness[FORCE] != meanAxialForce) {
      stiffness[FORCE] = meanAxialForce;
      STIFFNESS.evaluate(stiffness);
      STIFFNESS_TO_FORCES.copy(stiffness, forces);
      stale = false;
    }
  }

  /** The force set. */
  public double force() {
    return stiffness[FORCE];
  }

  /** A value of {@link BeamColumnStiffness} under the force set. */
  public double stiffnessValue(String symbol) {
    return stiffness[STIFFNESS.slot(symbol)];
  }

  /** Reduced force for bending about y (0) or z (1). */
  public double reducedForce(int axis) {
    return stiffness[axis == 0 ? KAPPA_Y : KAPPA_Z];
  }

  /**
   * The mean axial force that movements cause, N.
   *
   * @param movements 12, not modified
   */
  public double forceOf(double[] movements) {
    double stretch = 0;
    double[] b = model.deformationByMovement();
    for (int i = 0; i < ENDS; i++) {
      stretch += b[i] * movements[i];
    }
    axial[STRETCH] = stretch;
    AXIAL.evaluate(axial);
    return axial[AXIAL_FORCE];
  }

  /** The stretch of the movements last asked for by {@link #forceOf}, mm. */
  public double stretch() {
    return axial[STRETCH];
  }

  /**
   * Stiffness between movements and node forces under the force set.
   *
   * @param into 12 x 12, overwritten
   */
  public void stiffness(double[] into) {
    double[] b = model.deformationByMovement();
    double[] c = model.chordByMovement();
    double chord = stiffness[FORCE] * model.length();
    double sa = axial[AXIAL_STIFFNESS];
    for (int i = 0; i < ENDS; i++) {
      double stretch = sa * b[i];
      double twist = twisting * b[ENDS + i];
      double y1 = b[2 * ENDS + i];
      double y2 = b[3 * ENDS + i];
      double z1 = b[4 * ENDS + i];
      double z2 = b[5 * ENDS + i];
      double my1 = stiffness[BENDING[0]] * y1 + stiffness[BENDING[1]] * y2;
      double my2 = stiffness[BENDING[1]] * y1 + stiffness[BENDING[2]] * y2;
      double mz1 = stiffness[BENDING[3]] * z1 + stiffness[BENDING[4]] * z2;
      double mz2 = stiffness[BENDING[4]] * z1 + stiffness[BENDING[5]] * z2;
      double cz = chord * c[i];
      double cy = chord * c[ENDS + i];
      for (int j = i; j < ENDS; j++) {
        double sum =
            stretch * b[j]
                + twist * b[ENDS + j]
                + my1 * b[2 * ENDS + j]
                + my2 * b[3 * ENDS + j]
                + mz1 * b[4 * ENDS + j]
                + mz2 * b[5 * ENDS + j]
                + cz * c[j]
                + cy * c[ENDS + j];
        into[i * ENDS + j] = sum;
        into[j * ENDS + i] = sum;
      }
    }
    addArms(into);
  }

  private void addArms(double[] into) {
    double[] arms = model.armMomentByTurn();
    for (int at = 0; at < arms.length; at++) {
      int row = at / 6;
      int column = at % 6;
      into[place(row) * ENDS + place(column)] += stiffness[FORCE] * arms[at];
    }
  }

  /** The place of a turn among the twelve movements. */
  private static int place(int turn) {
    return turn < 3 ? 3 + turn : 6 + turn;
  }

  /**
   * End forces under the force set.
   *
   * @param movements 12, not modified
   * @param meanForce the mean axial force of the movements, see {@link #forceOf}; the force set
   *     acts on the moved bar
   * @param loadTurns t_1y, t_2y, t_1z, t_2z of all loads, not modified
   * @param loadMoments as in {@link SegmentModel#LOAD_MOMENTS}, not modified
   * @param into 12, overwritten
   */
  public void endForces(
      double[] movements,
      double meanForce,
      double[] loadTurns,
      double[] loadMoments,
      double[] into) {
    forces[MEAN_FORCE] = meanForce;
    forces[MOVED_FORCE] = stiffness[FORCE];
    double[] b = model.deformationByMovement();
    double[] c = model.chordByMovement();
    forces[TWIST] = product(b, 1, movements);
    for (int i = 0; i < TURNS.length; i++) {
      forces[TURNS[i]] = product(b, 2 + i, movements);
      forces[LOAD_TURNS[i]] = loadTurns[i];
    }
    forces[CHORD[0]] = product(c, 0, movements);
    forces[CHORD[1]] = product(c, 1, movements);
    for (int i = 0; i < LOAD_MOMENTS.length; i++) {
      forces[LOAD_MOMENTS[i]] = loadMoments[FROM_MOMENTS[i]];
    }
    FORCES.evaluate(forces);
    for (int i = 0; i < ENDS; i++) {
      into[i] = forces[END[i]];
    }
  }

  private static double product(double[] matrix, int row, double[] vector) {
    double sum = 0;
    for (int i = 0; i < ENDS; i++) {
      sum += matrix[row * ENDS + i] * vector[i];
    }
    return sum;
  }

  /**
   * The turn of a joint, node against member end, in the state last asked for by {@link
   * #endForces}, rad.
   *
   * @param joint 0 to 3, see {@link #JOINTS}
   */
  public double jointTurn(int joint) {
    int axis = joint % 2;
    int other = (joint + 2) % JOINTS;
    return forces[JOINT_TURNS[joint]]
        - forces[FREE_TURNS[joint]]
        - stiffness[FLEXIBILITY[2 * axis]] * forces[JOINT_MOMENTS[joint]]
        - stiffness[FLEXIBILITY[2 * axis + 1]] * forces[JOINT_MOMENTS[other]];
  }

  /** The moment on a joint in the state last asked for by {@link #endForces}, N·mm. */
  public double jointMoment(int joint) {
    return forces[JOINT_MOMENTS[joint]];
  }

  /**
   * What the segment takes from its nodes, global axes.
   *
   * @param endForces 12, not modified
   * @param movements 12, not modified
   * @param into 12, overwritten
   */
  public void nodeForces(double[] endForces, double[] movements, double[] into) {
    model.nodeForces(endForces, into);
    double[] arms = model.armMomentByTurn();
    for (int at = 0; at < arms.length; at++) {
      into[place(at / 6)] += stiffness[FORCE] * arms[at] * movements[place(at % 6)];
    }
  }

  /**
   * Turns of the bar's own ends from the chord about y (0) or z (1) by the movements of the nodes:
   * those of the nodes, less what joints give. Under the force set, without load.
   *
   * @return 2 x 12, a new array
   */
  public double[] barTurns(int axis) {
    double[] b = model.deformationByMovement();
    double near = stiffness[FLEXIBILITY[2 * axis]];
    double far = stiffness[FLEXIBILITY[2 * axis + 1]];
    double s11 = stiffness[BENDING[3 * axis]];
    double s12 = stiffness[BENDING[3 * axis + 1]];
    double s22 = stiffness[BENDING[3 * axis + 2]];
    double[] turns = new double[2 * ENDS];
    for (int i = 0; i < ENDS; i++) {
      double first = b[(2 + 2 * axis) * ENDS + i];
      double second = b[(3 + 2 * axis) * ENDS + i];
      double atFirst = s11 * first + s12 * second;
      double atSecond = s12 * first + s22 * second;
      turns[i] = near * atFirst + far * atSecond;
      turns[ENDS + i] = far * atFirst + near * atSecond;
    }
    return turns;
  }

  /**
   * How many ways the segment has buckled between its nodes, if these are held, under the force set
   * (Wittrick and Williams 1971): on simple bearings, less what its end turns add, plus what they
   * do with their joints.
   */
  public int buckledBetweenNodes() {
    return buckled(0) + buckled(1);
  }

  /** The same for bending about y (0) or z (1) alone. */
  public int buckled(int axis) {
    double reduced = reducedForce(axis);
    if (!(reduced > 0)) {
      return 0;
    }
    int simple = (int) Math.floor(Math.sqrt(reduced) / Math.PI);
    double near = stiffness[FLEXIBILITY[2 * axis]];
    double far = stiffness[FLEXIBILITY[2 * axis + 1]];
    double determinant = near * near - far * far;
    int bare = determinant < 0 ? 1 : near < 0 ? 2 : 0;
    return simple - bare + withJoints(axis, near / determinant, -far / determinant);
  }

  private int withJoints(int axis, double own, double mutual) {
    boolean rigid1 = stiffness[RIGID[axis]] > 0;
    boolean rigid2 = stiffness[RIGID[axis + 2]] > 0;
    double first = own + stiffness[SPRING[axis]];
    double second = own + stiffness[SPRING[axis + 2]];
    if (rigid1 && rigid2) {
      return 0;
    }
    if (rigid1 || rigid2) {
      return (rigid1 ? second : first) < 0 ? 1 : 0;
    }
    double determinant = first * second - mutual * mutual;
    return determinant < 0 ? 1 : first < 0 ? 2 : 0;
  }
}
