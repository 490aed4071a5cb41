package spanledger.analysis;

import java.util.Arrays;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.OutOfDomainException;
import spanledger.section.SectionProperties;

/** Evaluates the procedures for the length, the axes and the stiffness of a segment. */
final class SegmentValues {

  static final CompiledProcedure GEOMETRY = SegmentGeometry.PROCEDURE.compile();
  static final CompiledProcedure STIFFNESS = SegmentStiffness.PROCEDURE.compile();
  static final int LENGTH = GEOMETRY.slot("L");

  private static final SlotCopy GEOMETRY_TO_STIFFNESS = SlotCopy.between(GEOMETRY, STIFFNESS);
  private static final int[] PLACES = slots(GEOMETRY, "X_1", "Y_1", "Z_1", "X_2", "Y_2", "Z_2");
  private static final int[] ARMS = slots(GEOMETRY, "a_X1", "a_Y1", "a_Z1", "a_X2", "a_Y2", "a_Z2");
  private static final int[][] AXES = axes();
  private static final int ROLL = GEOMETRY.slot("β");
  private static final int PRINCIPAL = GEOMETRY.slot("α");
  private static final int[] PROPERTIES =
      slots(STIFFNESS, "E", "G", "A", "A_v_y", "A_v_z", "I_y", "I_z", "I_t");
  private static final int[] RIGID =
      slots(STIFFNESS, "r_x1", "r_y1", "r_z1", "r_x2", "r_y2", "r_z2", "r_a1", "r_a2");
  private static final int[] SPRING =
      slots(STIFFNESS, "k_x1", "k_y1", "k_z1", "k_x2", "k_y2", "k_z2", "k_a1", "k_a2");

  private SegmentValues() {}

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

  /** A local axis in global axes: 0 for x, 1 for y, 2 for z. */
  static Vector axis(double[] geometry, int local) {
    int[] at = AXES[local];
    return new Vector(geometry[at[0]], geometry[at[1]], geometry[at[2]]);
  }

  /** Whether both ends stand on their nodes. */
  static boolean isWithoutArms(double[] geometry) {
    for (int arm : ARMS) {
      if (geometry[arm] != 0) {
        return false;
      }
    }
    return true;
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

  private static int[][] axes() {
    return Arrays.stream(SegmentAxes.LOCAL)
        .map(local -> slots(GEOMETRY, local + "_X", local + "_Y", local + "_Z"))
        .toArray(int[][]::new);
  }

  private static int[] slots(CompiledProcedure procedure, String... symbols) {
    return Arrays.stream(symbols).mapToInt(procedure::slot).toArray();
  }

  private static String words(Vector place) {
    return "(" + place.x() + ", " + place.y() + ", " + place.z() + ")";
  }
}
