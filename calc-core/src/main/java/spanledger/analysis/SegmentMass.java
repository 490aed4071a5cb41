package spanledger.analysis;

import spanledger.frame.MemberRole;
import spanledger.procedure.CompiledProcedure;

/**
 * A segment with an even mass along it, as {@link SegmentInertia} has it. Not for several threads
 * at once.
 */
public final class SegmentMass {

  private static final int ENDS = SegmentModel.ENDS;
  private static final CompiledProcedure BAR = BarInertia.PROCEDURE.compile();
  private static final CompiledProcedure INERTIA = SegmentInertia.PROCEDURE.compile();
  private static final SlotCopy GEOMETRY_TO_INERTIA =
      SlotCopy.between(SegmentValues.GEOMETRY, INERTIA);
  private static final SlotCopy STIFFNESS_TO_INERTIA =
      SlotCopy.between(SegmentValues.STIFFNESS, INERTIA);
  private static final SlotCopy STIFFNESS_TO_BAR = SlotCopy.between(SegmentValues.STIFFNESS, BAR);
  private static final SlotCopy BAR_TO_INERTIA = SlotCopy.between(BAR, INERTIA);
  private static final int[] MOVEMENTS =
      SegmentMatrices.MOVEMENTS.stream().mapToInt(INERTIA::slot).toArray();
  private static final int[] FORCES =
      SegmentMatrices.END_FORCES.stream()
          .map(force -> force.replace('F', 'i').replace('M', 'j'))
          .mapToInt(INERTIA::slot)
          .toArray();
  private static final String[] BENT = {"M_y1", "M_y2", "M_z1", "M_z2"};

  private final SegmentModel model;
  private final double[] slots = INERTIA.newSlots();
  private final double[] deformations = new double[SegmentModel.DEFORMATIONS];
  private final double[] endForces = new double[ENDS];

  /**
   * Prepares a segment.
   *
   * @param mass of the segment and of what lies on it, kg
   */
  public SegmentMass(SegmentModel model, double mass) {
    this.model = model;
    model.copyGeometry(GEOMETRY_TO_INERTIA, slots);
    model.copyStiffness(STIFFNESS_TO_INERTIA, slots);
    double[] bar = BAR.newSlots();
    model.copyStiffness(STIFFNESS_TO_BAR, bar);
    bar[BAR.slot("ρ")] = model.segment().member().alloy().density();
    BAR.evaluate(bar);
    BAR_TO_INERTIA.copy(bar, slots);
    slots[INERTIA.slot("m")] = mass;
    slots[INERTIA.slot("λ")] = 1;
    slots[INERTIA.slot("o")] = model.segment().member().role() == MemberRole.FLOOR ? 1 : 0;
  }

  private void move(double[] movements) {
    for (int i = 0; i < ENDS; i++) {
      slots[MOVEMENTS[i]] = movements[i];
    }
    model.deformations(movements, deformations);
    model.endForces(deformations, endForces);
    slots[INERTIA.slot("e")] = deformations[0];
    slots[INERTIA.slot("φ")] = deformations[1];
    for (String moment : BENT) {
      slots[INERTIA.slot(moment)] = endForces[SegmentMatrices.END_FORCES.indexOf(moment)];
    }
    INERTIA.evaluate(slots);
  }

  /**
   * The mass matrix between movements and node forces; kg, kg·mm, kg·mm².
   *
   * @param into 12 x 12, overwritten; exactly symmetric
   */
  public void matrix(double[] into) {
    double[] movements = new double[ENDS];
    double[] local = new double[ENDS];
    double[] column = new double[ENDS];
    for (int j = 0; j < ENDS; j++) {
      movements[j] = 1;
      move(movements);
      movements[j] = 0;
      for (int i = 0; i < ENDS; i++) {
        local[i] = slots[FORCES[i]];
      }
      model.nodeForces(local, column);
      for (int i = 0; i < ENDS; i++) {
        into[i * ENDS + j] = column[i];
      }
    }
    for (int i = 0; i < ENDS; i++) {
      for (int j = 0; j < i; j++) {
        double mean = 0.5 * (into[i * ENDS + j] + into[j * ENDS + i]);
        into[i * ENDS + j] = mean;
        into[j * ENDS + i] = mean;
      }
    }
  }

  /**
   * Mass times squared shifts of the two nodes, kg·mm².
   *
   * @param movements 12, not modified
   * @return of a floor up and down (0 for other members), then of all shifts
   */
  public double[] swing(double[] movements) {
    move(movements);
    return new double[] {slots[INERTIA.slot("E_o")], slots[INERTIA.slot("E")]};
  }
}
