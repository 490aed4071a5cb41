package spanledger.analysis;

import spanledger.procedure.CompiledProcedure;

/** Evaluates the procedures for internal forces and deflections at a cut. */
final class CutForces {

  /** N, V_y, V_z, T, M_y, M_z. */
  static final int FORCES = 6;

  /** g_0x, g_0y, g_1y, g_3y, g_0z, g_1z, g_3z. */
  static final int BEFORE = 7;

  private static final CompiledProcedure SECTION = SectionForces.PROCEDURE.compile();
  private static final CompiledProcedure CHORD = ChordDeflection.PROCEDURE.compile();
  private static final SlotCopy STIFFNESS_TO_CHORD =
      SlotCopy.between(SegmentValues.STIFFNESS, CHORD);
  private static final int SECTION_X = SECTION.slot("x");
  private static final int[] SECTION_END =
      slots(SECTION, "F_x1", "F_y1", "F_z1", "M_x1", "M_y1", "M_z1");
  private static final int[] SECTION_BEFORE =
      slots(SECTION, "g_0x", "g_0y", "g_1y", "g_0z", "g_1z");
  private static final int[] SECTION_RESULT = slots(SECTION, "N", "V_y", "V_z", "T", "M_y", "M_z");
  private static final int CHORD_X = CHORD.slot("x");
  private static final int[] CHORD_END = slots(CHORD, "F_y1", "F_z1", "M_y1", "M_z1");
  private static final int[] CHORD_BEFORE = slots(CHORD, "g_1y", "g_3y", "g_1z", "g_3z");
  private static final int[] CHORD_MOMENTS =
      slots(CHORD, "m_0y", "m_1y", "m_2y", "m_3y", "m_0z", "m_1z", "m_2z", "m_3z");
  private static final int CHORD_Y = CHORD.slot("d_y");
  private static final int CHORD_Z = CHORD.slot("d_z");
  private static final double[] AT_START = byEndForces(0);
  private static final double[] AT_ONE = byEndForces(1);

  private CutForces() {}

  private static int[] slots(CompiledProcedure procedure, String... symbols) {
    int[] slots = new int[symbols.length];
    for (int i = 0; i < symbols.length; i++) {
      slots[i] = procedure.slot(symbols[i]);
    }
    return slots;
  }

  private static double[] byEndForces(double x) {
    double[] matrix = new double[FORCES * FORCES];
    double[] end = new double[FORCES];
    double[] column = new double[FORCES];
    for (int j = 0; j < FORCES; j++) {
      end[j] = 1;
      sectionForces(x, end, new double[BEFORE], column);
      end[j] = 0;
      for (int i = 0; i < FORCES; i++) {
        matrix[i * FORCES + j] = column[i];
      }
    }
    return matrix;
  }

  /**
   * Internal forces by the procedure.
   *
   * @param end the six forces at end 1, not modified
   * @param before the effects of the loads before the cut, not modified
   * @param into six, overwritten
   */
  static void sectionForces(double x, double[] end, double[] before, double[] into) {
    double[] slots = SECTION.newSlots();
    slots[SECTION_X] = x;
    for (int i = 0; i < FORCES; i++) {
      slots[SECTION_END[i]] = end[i];
    }
    slots[SECTION_BEFORE[0]] = before[0];
    slots[SECTION_BEFORE[1]] = before[1];
    slots[SECTION_BEFORE[2]] = before[2];
    slots[SECTION_BEFORE[3]] = before[4];
    slots[SECTION_BEFORE[4]] = before[5];
    SECTION.evaluate(slots);
    for (int i = 0; i < FORCES; i++) {
      into[i] = slots[SECTION_RESULT[i]];
    }
  }

  /**
   * What the forces at end 1 alone give: it changes linearly along the segment.
   *
   * @param end six, not modified
   * @param start values at x = 0, overwritten
   * @param slope change per mm, overwritten
   */
  static void linear(double[] end, double[] start, double[] slope) {
    for (int i = 0; i < FORCES; i++) {
      double atStart = 0;
      double atOne = 0;
      for (int j = 0; j < FORCES; j++) {
        atStart += AT_START[i * FORCES + j] * end[j];
        atOne += AT_ONE[i * FORCES + j] * end[j];
      }
      start[i] = atStart;
      slope[i] = atOne - atStart;
    }
  }

  /** What the forces at end 1 alone give at a cut; {@code end} is six from {@code at} on. */
  static void linear(double x, double[] end, int at, double[] into) {
    for (int i = 0; i < FORCES; i++) {
      double sum = 0;
      for (int j = 0; j < FORCES; j++) {
        double atStart = AT_START[i * FORCES + j];
        sum += (atStart + x * (AT_ONE[i * FORCES + j] - atStart)) * end[at + j];
      }
      into[i] = sum;
    }
  }

  /**
   * Deflections from the chord by the procedure.
   *
   * @param end the six forces at end 1
   * @param before the effects of the loads before the cut
   * @param moments the ten load moments
   * @param into d_y, d_z, overwritten
   */
  static void deflections(
      SegmentModel model,
      double x,
      double[] end,
      double[] before,
      double[] moments,
      double[] into) {
    double[] slots = CHORD.newSlots();
    model.copyStiffness(STIFFNESS_TO_CHORD, slots);
    slots[CHORD_X] = x;
    slots[CHORD_END[0]] = end[1];
    slots[CHORD_END[1]] = end[2];
    slots[CHORD_END[2]] = end[4];
    slots[CHORD_END[3]] = end[5];
    slots[CHORD_BEFORE[0]] = before[2];
    slots[CHORD_BEFORE[1]] = before[3];
    slots[CHORD_BEFORE[2]] = before[5];
    slots[CHORD_BEFORE[3]] = before[6];
    for (int i = 0; i < CHORD_MOMENTS.length; i++) {
      slots[CHORD_MOMENTS[i]] = moments[2 + i];
    }
    CHORD.evaluate(slots);
    into[0] = slots[CHORD_Y];
    into[1] = slots[CHORD_Z];
  }
}
