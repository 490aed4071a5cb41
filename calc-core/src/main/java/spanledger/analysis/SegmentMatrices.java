package spanledger.analysis;

import java.nio.DoubleBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.OutOfDomainException;
import spanledger.section.SectionProperties;

/**
 * Evaluates the procedures of the segment mechanics. Segments that are alike share their matrices,
 * which nobody may modify.
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

  static final CompiledProcedure GEOMETRY = SegmentGeometry.PROCEDURE.compile();
  static final CompiledProcedure STIFFNESS = SegmentStiffness.PROCEDURE.compile();
  private static final CompiledProcedure DEFORMATION = BasicDeformations.PROCEDURE.compile();
  private static final CompiledProcedure END_FORCE = EndForces.PROCEDURE.compile();
  private static final CompiledProcedure NODE_FORCE = NodeForces.PROCEDURE.compile();

  private static final CompiledProcedure ARM_TILT = ArmTilt.PROCEDURE.compile();
  private static final SlotCopy GEOMETRY_TO_ARM_TILT = SlotCopy.between(GEOMETRY, ARM_TILT);
  private static final UnitEvaluation ARM_MOMENT_BY_TURN =
      new UnitEvaluation(
          ARM_TILT,
          List.of("φ_X1", "φ_Y1", "φ_Z1", "φ_X2", "φ_Y2", "φ_Z2"),
          List.of("A_X1", "A_Y1", "A_Z1", "A_X2", "A_Y2", "A_Z2"));

  private static final SlotCopy GEOMETRY_TO_STIFFNESS = SlotCopy.between(GEOMETRY, STIFFNESS);
  private static final SlotCopy GEOMETRY_TO_DEFORMATION = SlotCopy.between(GEOMETRY, DEFORMATION);
  private static final SlotCopy STIFFNESS_TO_END_FORCE = SlotCopy.between(STIFFNESS, END_FORCE);
  private static final SlotCopy GEOMETRY_TO_NODE_FORCE = SlotCopy.between(GEOMETRY, NODE_FORCE);

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

  private static final int[] PLACES = slots(GEOMETRY, "X_1", "Y_1", "Z_1", "X_2", "Y_2", "Z_2");
  private static final int[] ARMS = slots(GEOMETRY, "a_X1", "a_Y1", "a_Z1", "a_X2", "a_Y2", "a_Z2");
  private static final int ROLL = GEOMETRY.slot("β");
  private static final int PRINCIPAL = GEOMETRY.slot("α");
  private static final int LENGTH = GEOMETRY.slot("L");
  private static final int[] PROPERTIES =
      slots(STIFFNESS, "E", "G", "A", "A_v_y", "A_v_z", "I_y", "I_z", "I_t");
  private static final int[] RIGID =
      slots(STIFFNESS, "r_x1", "r_y1", "r_z1", "r_x2", "r_y2", "r_z2", "r_a1", "r_a2");
  private static final int[] SPRING =
      slots(STIFFNESS, "k_x1", "k_y1", "k_z1", "k_x2", "k_y2", "k_z2", "k_a1", "k_a2");

  private final Map<DoubleBuffer, double[]> deformations = new HashMap<>();
  private final Map<DoubleBuffer, double[]> movements = new HashMap<>();
  private final Map<DoubleBuffer, double[]> chords = new HashMap<>();
  private final Map<DoubleBuffer, double[]> arms = new HashMap<>();
  private final Map<DoubleBuffer, double[]> endForces = new HashMap<>();
  private final Map<DoubleBuffer, double[]> fixedEndForces = new HashMap<>();
  private final Map<DoubleBuffer, double[]> nodeForces = new HashMap<>();

  /**
   * Length and axes, by the places of {@link #GEOMETRY}.
   *
   * @throws IllegalArgumentException if the segment has no length
   */
  static double[] geometry(Segment segment) {
    double[] slots = GEOMETRY.newSlots();
    set(slots, PLACES, 0, segment.first().place());
    set(slots, PLACES, 3, segment.second().place());
    set(slots, ARMS, 0, segment.start().offset());
    set(slots, ARMS, 3, segment.end().offset());
    slots[ROLL] = segment.member().roll();
    slots[PRINCIPAL] = segment.member().section().properties().principalRotation();
    GEOMETRY.evaluate(slots);
    double reach = segment.first().place().norm() + segment.second().place().norm();
    double length = slots[LENGTH];
    // Coordinates carry about 16 digits; below this the length is their rounding.
    if (!(length > 1e-12 * reach) || !Double.isFinite(length)) {
      throw new IllegalArgumentException(
          "Member "
              + segment.name()
              + " has no length between node "
              + segment.first().name()
              + " and node "
              + segment.second().name()
              + ": both ends stand at "
              + words(segment.from())
              + " mm. Move one of the nodes, or leave one of them out.");
    }
    GEOMETRY.requireInDomain(slots);
    return slots;
  }

  /**
   * Stiffness, by the places of {@link #STIFFNESS}.
   *
   * @throws IllegalArgumentException if a property of section or material is out of its domain
   */
  static double[] stiffness(Segment segment, double[] geometry) {
    double[] slots = STIFFNESS.newSlots();
    GEOMETRY_TO_STIFFNESS.copy(geometry, slots);
    Alloy alloy = segment.member().alloy();
    SectionProperties section = segment.member().section().properties();
    slots[PROPERTIES[0]] = alloy.youngsModulus();
    slots[PROPERTIES[1]] = alloy.shearModulus();
    slots[PROPERTIES[2]] = section.area();
    slots[PROPERTIES[3]] = section.shearAreaY();
    slots[PROPERTIES[4]] = section.shearAreaZ();
    slots[PROPERTIES[5]] = section.secondMomentY();
    slots[PROPERTIES[6]] = section.secondMomentZ();
    slots[PROPERTIES[7]] = section.torsionConstant();
    hold(slots, 0, segment.start());
    hold(slots, 3, segment.end());
    hold(slots, 6, segment.start().axial());
    hold(slots, 7, segment.end().axial());
    STIFFNESS.evaluate(slots);
    try {
      STIFFNESS.requireInDomain(slots);
    } catch (OutOfDomainException e) {
      throw new IllegalArgumentException("Member " + segment.name() + ": " + e.getMessage(), e);
    }
    return slots;
  }

  /** 6 x 12. */
  double[] deformationByMovement(double[] geometry) {
    return ofMovement(geometry, deformations, 0, DEFORMATIONS.size());
  }

  /** Slopes of the chord in the x-z and the x-y plane; 2 x 12. */
  double[] chordByMovement(double[] geometry) {
    return ofMovement(geometry, chords, DEFORMATIONS.size(), DEFORMATIONS.size() + 2);
  }

  private double[] ofMovement(
      double[] geometry, Map<DoubleBuffer, double[]> kept, int from, int to) {
    double[] slots = DEFORMATION.newSlots();
    GEOMETRY_TO_DEFORMATION.copy(geometry, slots);
    DoubleBuffer key = inputs(DEFORMATION, slots);
    int row = MOVEMENTS.size();
    return kept.computeIfAbsent(
        key,
        same ->
            Arrays.copyOfRange(
                movements.computeIfAbsent(key, k -> DEFORMATION_BY_MOVEMENT.matrix(slots)),
                from * row,
                to * row));
  }

  /**
   * Extra moments of nodes from turned arms, per unit axial force; 6 x 6, or empty without arms.
   */
  double[] armMomentByTurn(double[] geometry) {
    double[] slots = ARM_TILT.newSlots();
    GEOMETRY_TO_ARM_TILT.copy(geometry, slots);
    slots[ARM_TILT.slot("N")] = 1;
    boolean straight = true;
    for (int arm : ARMS) {
      straight &= geometry[arm] == 0;
    }
    if (straight) {
      return new double[0];
    }
    return arms.computeIfAbsent(inputs(ARM_TILT, slots), same -> ARM_MOMENT_BY_TURN.matrix(slots));
  }

  /** 12 x 6. */
  double[] endForceByDeformation(double[] stiffness) {
    double[] slots = endForceSlots(stiffness);
    return endForces.computeIfAbsent(
        inputs(END_FORCE, slots), same -> END_FORCE_BY_DEFORMATION.matrix(slots));
  }

  /** 12 x 10. */
  double[] endForceByLoad(double[] stiffness) {
    double[] slots = endForceSlots(stiffness);
    return fixedEndForces.computeIfAbsent(
        inputs(END_FORCE, slots), same -> END_FORCE_BY_LOAD.matrix(slots));
  }

  /** 12 x 12. */
  double[] nodeForceByEndForce(double[] geometry) {
    double[] slots = NODE_FORCE.newSlots();
    GEOMETRY_TO_NODE_FORCE.copy(geometry, slots);
    return nodeForces.computeIfAbsent(
        inputs(NODE_FORCE, slots), same -> NODE_FORCE_BY_END_FORCE.matrix(slots));
  }

  /** Equal for equal inputs. */
  private static DoubleBuffer inputs(CompiledProcedure procedure, double[] slots) {
    return DoubleBuffer.wrap(Arrays.copyOf(slots, procedure.procedure().inputs().size()));
  }

  private static double[] endForceSlots(double[] stiffness) {
    double[] slots = END_FORCE.newSlots();
    STIFFNESS_TO_END_FORCE.copy(stiffness, slots);
    return slots;
  }

  private static void hold(double[] slots, int at, MemberEnd joint) {
    hold(slots, at, joint.torsion());
    hold(slots, at + 1, joint.aboutY());
    hold(slots, at + 2, joint.aboutZ());
  }

  private static void hold(double[] slots, int at, Restraint given) {
    Restraint restraint = given.engaged();
    slots[RIGID[at]] = restraint instanceof Restraint.Fixed ? 1 : 0;
    slots[SPRING[at]] = restraint instanceof Restraint.Spring spring ? spring.stiffness() : 0;
  }

  private static void set(double[] slots, int[] at, int from, Vector place) {
    slots[at[from]] = place.x();
    slots[at[from + 1]] = place.y();
    slots[at[from + 2]] = place.z();
  }

  private static int[] slots(CompiledProcedure procedure, String... symbols) {
    return Arrays.stream(symbols).mapToInt(procedure::slot).toArray();
  }

  private static String words(Vector place) {
    return "(" + place.x() + ", " + place.y() + ", " + place.z() + ")";
  }
}
