package spanledger.analysis;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.OutOfDomainException;
import spanledger.section.SectionProperties;

/** Evaluates the procedures of the segment mechanics for one segment. */
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

  private static final SlotCopy GEOMETRY_TO_STIFFNESS = SlotCopy.between(GEOMETRY, STIFFNESS);
  private static final SlotCopy GEOMETRY_TO_DEFORMATION = SlotCopy.between(GEOMETRY, DEFORMATION);
  private static final SlotCopy STIFFNESS_TO_END_FORCE = SlotCopy.between(STIFFNESS, END_FORCE);
  private static final SlotCopy GEOMETRY_TO_NODE_FORCE = SlotCopy.between(GEOMETRY, NODE_FORCE);

  private static final UnitEvaluation DEFORMATION_BY_MOVEMENT =
      new UnitEvaluation(DEFORMATION, MOVEMENTS, DEFORMATIONS);
  private static final UnitEvaluation END_FORCE_BY_DEFORMATION =
      new UnitEvaluation(END_FORCE, DEFORMATIONS, END_FORCES);
  private static final UnitEvaluation END_FORCE_BY_LOAD =
      new UnitEvaluation(END_FORCE, LOAD_MOMENTS, END_FORCES);
  private static final UnitEvaluation NODE_FORCE_BY_END_FORCE =
      new UnitEvaluation(NODE_FORCE, END_FORCES, NODE_FORCES);

  private static final String[] GLOBAL = SegmentAxes.GLOBAL;
  private static final String[] LOCAL = SegmentAxes.LOCAL;

  private SegmentMatrices() {}

  /**
   * Length and axes, by the places of {@link #GEOMETRY}.
   *
   * @throws IllegalArgumentException if the segment has no length
   */
  static double[] geometry(Segment segment) {
    double[] slots = GEOMETRY.newSlots();
    set(slots, "", "_1", segment.first().place());
    set(slots, "", "_2", segment.second().place());
    set(slots, "a_", "1", segment.start().offset());
    set(slots, "a_", "2", segment.end().offset());
    slots[GEOMETRY.slot("β")] = segment.member().roll();
    slots[GEOMETRY.slot("α")] = segment.member().section().properties().principalRotation();
    GEOMETRY.evaluate(slots);
    double reach = segment.first().place().norm() + segment.second().place().norm();
    double length = slots[GEOMETRY.slot("L")];
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
    slots[STIFFNESS.slot("E")] = alloy.youngsModulus();
    slots[STIFFNESS.slot("G")] = alloy.shearModulus();
    slots[STIFFNESS.slot("A")] = section.area();
    slots[STIFFNESS.slot("A_v_y")] = section.shearAreaY();
    slots[STIFFNESS.slot("A_v_z")] = section.shearAreaZ();
    slots[STIFFNESS.slot("I_y")] = section.secondMomentY();
    slots[STIFFNESS.slot("I_z")] = section.secondMomentZ();
    slots[STIFFNESS.slot("I_t")] = section.torsionConstant();
    hold(slots, "1", segment.start());
    hold(slots, "2", segment.end());
    STIFFNESS.evaluate(slots);
    try {
      STIFFNESS.requireInDomain(slots);
    } catch (OutOfDomainException e) {
      throw new IllegalArgumentException("Member " + segment.name() + ": " + e.getMessage(), e);
    }
    return slots;
  }

  /** 6 x 12. */
  static double[] deformationByMovement(double[] geometry) {
    double[] slots = DEFORMATION.newSlots();
    GEOMETRY_TO_DEFORMATION.copy(geometry, slots);
    return DEFORMATION_BY_MOVEMENT.matrix(slots);
  }

  /** 12 x 6. */
  static double[] endForceByDeformation(double[] stiffness) {
    return END_FORCE_BY_DEFORMATION.matrix(endForceSlots(stiffness));
  }

  /** 12 x 10. */
  static double[] endForceByLoad(double[] stiffness) {
    return END_FORCE_BY_LOAD.matrix(endForceSlots(stiffness));
  }

  /** 12 x 12. */
  static double[] nodeForceByEndForce(double[] geometry) {
    double[] slots = NODE_FORCE.newSlots();
    GEOMETRY_TO_NODE_FORCE.copy(geometry, slots);
    return NODE_FORCE_BY_END_FORCE.matrix(slots);
  }

  private static double[] endForceSlots(double[] stiffness) {
    double[] slots = END_FORCE.newSlots();
    STIFFNESS_TO_END_FORCE.copy(stiffness, slots);
    return slots;
  }

  private static void hold(double[] slots, String end, MemberEnd joint) {
    List<Restraint> holds = new ArrayList<>();
    holds.add(joint.torsion());
    holds.add(joint.aboutY());
    holds.add(joint.aboutZ());
    for (int axis = 0; axis < 3; axis++) {
      Restraint restraint = holds.get(axis);
      slots[STIFFNESS.slot("r_" + LOCAL[axis] + end)] =
          restraint instanceof Restraint.Fixed ? 1 : 0;
      slots[STIFFNESS.slot("k_" + LOCAL[axis] + end)] =
          restraint instanceof Restraint.Spring spring ? spring.stiffness() : 0;
    }
  }

  private static void set(double[] slots, String before, String after, Vector place) {
    slots[GEOMETRY.slot(before + GLOBAL[0] + after)] = place.x();
    slots[GEOMETRY.slot(before + GLOBAL[1] + after)] = place.y();
    slots[GEOMETRY.slot(before + GLOBAL[2] + after)] = place.z();
  }

  private static String words(Vector place) {
    return "(" + place.x() + ", " + place.y() + ", " + place.z() + ")";
  }
}
