package spanledger.envelope;

import java.util.Arrays;
import java.util.List;
import spanledger.analysis.SectionForces;
import spanledger.analysis.WeightedLoad;
import spanledger.procedure.CompiledProcedure;

/** Internal forces at cuts from end forces; reuses its arrays, so one per thread. */
final class CutForces {

  /** N, V_y, V_z, T, M_y, M_z. */
  static final int COUNT = 6;

  private static final CompiledProcedure SECTION = SectionForces.PROCEDURE.compile();
  private static final int FIRST_END = SECTION.slot("F_x1");
  private static final int BEFORE = SECTION.slot("g_0x");
  private static final int RESULT = SECTION.slot("N");

  private final double[] slots = SECTION.newSlots();
  private final double[] before = new double[7];

  /**
   * The internal forces at a cut.
   *
   * @param endForces forces on end 1, six from {@code at} on; not modified
   * @param loads on the segment, with their factors
   * @param x place of the cut, mm
   * @param into six from {@code to} on, overwritten
   */
  void at(double[] endForces, int at, List<WeightedLoad> loads, double x, double[] into, int to) {
    slots[0] = x;
    System.arraycopy(endForces, at, slots, FIRST_END, COUNT);
    Arrays.fill(before, 0);
    for (WeightedLoad load : loads) {
      load.load().addBefore(x, load.weight(), before);
    }
    slots[BEFORE] = before[0];
    slots[BEFORE + 1] = before[1];
    slots[BEFORE + 2] = before[2];
    slots[BEFORE + 3] = before[4];
    slots[BEFORE + 4] = before[5];
    SECTION.evaluate(slots);
    System.arraycopy(slots, RESULT, into, to, COUNT);
  }
}
