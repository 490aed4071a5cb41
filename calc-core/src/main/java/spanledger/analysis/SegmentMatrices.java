package spanledger.analysis;

import java.util.Arrays;
import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * The matrices of a segment, got by evaluating the procedures of its mechanics on unit inputs.
 * Segments that are alike share one; nobody may modify an array.
 */
final class SegmentMatrices {

  static final List<String> MOVEMENTS =
      List.of(
          "u_X1", "u_Y1", "u_Z1", "φ_X1", "φ_Y1", "φ_Z1", "u_X2", "u_Y2", "u_Z2", "φ_X2", "φ_Y2",
          "φ_Z2");
  static final List<String> DEFORMATIONS = List.of("e", "φ", "θ_y1", "θ_y2", "θ_z1", "θ_z2");

  /** The end forces that do work on the basic deformations, in their order. */
  static final List<String> BASIC_FORCES = List.of("F_x2", "M_x2", "M_y1", "M_y2", "M_z1", "M_z2");

  static final List<String> LOAD_MOMENTS =
      List.of("m_0x", "m_1x", "m_0y", "m_1y", "m_2y", "m_3y", "m_0z", "m_1z", "m_2z", "m_3z");
  static final List<String> END_FORCES =
      List.of(
          "F_x1", "F_y1", "F_z1", "M_x1", "M_y1", "M_z1", "F_x2", "F_y2", "F_z2", "M_x2", "M_y2",
          "M_z2");
  static final List<String> NODE_FORCES =
      List.of(
          "R_X1", "R_Y1", "R_Z1", "S_X1", "S_Y1", "S_Z1", "R_X2", "R_Y2", "R_Z2", "S_X2", "S_Y2",
          "S_Z2");

  /** The place of each basic force among the end forces. */
  private static final int[] BASIC_ROWS =
      BASIC_FORCES.stream().mapToInt(END_FORCES::indexOf).toArray();

  private static final CompiledProcedure DEFORMATION = BasicDeformations.PROCEDURE.compile();
  private static final CompiledProcedure END_FORCE = EndForces.PROCEDURE.compile();
  private static final CompiledProcedure NODE_FORCE = NodeForces.PROCEDURE.compile();
  private static final CompiledProcedure ARM_TILT = ArmTilt.PROCEDURE.compile();
  private static final int ARM_FORCE = ARM_TILT.slot("N");
  private static final SlotCopy GEOMETRY_TO_DEFORMATION =
      SlotCopy.between(SegmentValues.GEOMETRY, DEFORMATION);
  private static final SlotCopy GEOMETRY_TO_NODE_FORCE =
      SlotCopy.between(SegmentValues.GEOMETRY, NODE_FORCE);
  private static final SlotCopy GEOMETRY_TO_ARM_TILT =
      SlotCopy.between(SegmentValues.GEOMETRY, ARM_TILT);
  private static final SlotCopy STIFFNESS_TO_END_FORCE =
      SlotCopy.between(SegmentValues.STIFFNESS, END_FORCE);

  /** Six deformations, then the slopes ψ_z and ψ_y of the chord. */
  private static final UnitEvaluation DEFORMATION_BY_MOVEMENT =
      new UnitEvaluation(
          DEFORMATION, MOVEMENTS, List.of("e", "φ", "θ_y1", "θ_y2", "θ_z1", "θ_z2", "ψ_z", "ψ_y"));

  private static final UnitEvaluation END_FORCE_BY_DEFORMATION =
      new UnitEvaluation(END_FORCE, DEFORMATIONS, END_FORCES);
  private static final UnitEvaluation END_FORCE_BY_LOAD =
      new UnitEvaluation(END_FORCE, LOAD_MOMENTS, END_FORCES);
  private static final UnitEvaluation NODE_FORCE_BY_END_FORCE =
      new UnitEvaluation(NODE_FORCE, END_FORCES, NODE_FORCES);

  private static final UnitEvaluation ARM_MOMENT_BY_TURN =
      new UnitEvaluation(
          ARM_TILT,
          List.of("φ_X1", "φ_Y1", "φ_Z1", "φ_X2", "φ_Y2", "φ_Z2"),
          List.of("A_X1", "A_Y1", "A_Z1", "A_X2", "A_Y2", "A_Z2"));

  private static final int ENDS = SegmentModel.ENDS;

  /** 6 x 12. */
  final double[] deformationByMovement;

  /** Slopes of the chord in the x-z and the x-y plane; 2 x 12. */
  final double[] chordByMovement;

  /** 12 x 6. */
  final double[] endForceByDeformation;

  /** 12 x 10. */
  final double[] endForceByLoad;

  /** 12 x 12. */
  final double[] nodeForceByEndForce;

  /** The stiffness, 12 x 12. */
  final double[] nodeForceByMovement;

  /** Forces at end 1, 6 x 12. */
  final double[] startForceByMovement;

  /**
   * Extra moments of nodes from turned arms, per unit axial force; 6 x 6, or empty without arms.
   */
  final double[] armMomentByTurn;

  /**
   * Evaluates the procedures.
   *
   * @param geometry by the places of {@link SegmentValues#GEOMETRY}
   * @param stiffness by the places of {@link SegmentValues#STIFFNESS}
   */
  SegmentMatrices(double[] geometry, double[] stiffness) {
    double[] deformation = slots(DEFORMATION, GEOMETRY_TO_DEFORMATION, geometry);
    double[] byMovement = DEFORMATION_BY_MOVEMENT.matrix(deformation);
    int split = DEFORMATIONS.size() * ENDS;
    deformationByMovement = Arrays.copyOf(byMovement, split);
    chordByMovement = Arrays.copyOfRange(byMovement, split, byMovement.length);
    endForceByDeformation =
        END_FORCE_BY_DEFORMATION.matrix(slots(END_FORCE, STIFFNESS_TO_END_FORCE, stiffness));
    endForceByLoad = END_FORCE_BY_LOAD.matrix(slots(END_FORCE, STIFFNESS_TO_END_FORCE, stiffness));
    nodeForceByEndForce =
        NODE_FORCE_BY_END_FORCE.matrix(slots(NODE_FORCE, GEOMETRY_TO_NODE_FORCE, geometry));
    nodeForceByMovement = congruent(deformationByMovement, endForceByDeformation);
    startForceByMovement = product(endForceByDeformation, ENDS / 2, deformationByMovement);
    armMomentByTurn = armMomentByTurn(geometry);
  }

  /** All that the matrices hang on, for finding segments that are alike. */
  static double[] key(double[] geometry, double[] stiffness) {
    int ofDeformation = DEFORMATION.procedure().inputs().size();
    int ofEndForce = END_FORCE.procedure().inputs().size();
    double[] key = new double[ofDeformation + ofEndForce];
    // Cosines, arms and length, which the forces of nodes and the tilt of arms take, too.
    GEOMETRY_TO_DEFORMATION.copy(geometry, key);
    STIFFNESS_TO_END_FORCE.copy(stiffness, key, ofDeformation);
    return key;
  }

  private static double[] slots(CompiledProcedure procedure, SlotCopy copy, double[] from) {
    double[] slots = procedure.newSlots();
    copy.copy(from, slots);
    return slots;
  }

  private static double[] armMomentByTurn(double[] geometry) {
    if (SegmentValues.isWithoutArms(geometry)) {
      return new double[0];
    }
    double[] slots = slots(ARM_TILT, GEOMETRY_TO_ARM_TILT, geometry);
    slots[ARM_FORCE] = 1;
    return ARM_MOMENT_BY_TURN.matrix(slots);
  }

  /**
   * Bᵀ S B, exactly symmetric; B from the deformations, S from the end forces conjugate to them.
   */
  private static double[] congruent(
      double[] deformationByMovement, double[] endForceByDeformation) {
    int size = BASIC_ROWS.length;
    double[] s = new double[size * size];
    for (int i = 0; i < size; i++) {
      System.arraycopy(endForceByDeformation, BASIC_ROWS[i] * size, s, i * size, size);
    }
    double[] sb = product(s, size, deformationByMovement);
    double[] k = new double[ENDS * ENDS];
    for (int i = 0; i < ENDS; i++) {
      for (int j = i; j < ENDS; j++) {
        double sum = 0;
        for (int d = 0; d < size; d++) {
          sum += deformationByMovement[d * ENDS + i] * sb[d * ENDS + j];
        }
        k[i * ENDS + j] = sum;
        k[j * ENDS + i] = sum;
      }
    }
    return k;
  }

  private static double[] product(double[] left, int rows, double[] right) {
    int inner = right.length / ENDS;
    double[] result = new double[rows * ENDS];
    for (int i = 0; i < rows; i++) {
      for (int k = 0; k < inner; k++) {
        double factor = left[i * inner + k];
        if (factor != 0) {
          for (int j = 0; j < ENDS; j++) {
            result[i * ENDS + j] += factor * right[k * ENDS + j];
          }
        }
      }
    }
    return result;
  }
}
