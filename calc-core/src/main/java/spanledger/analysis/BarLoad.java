package spanledger.analysis;

import spanledger.procedure.CompiledProcedure;

/**
 * A load on a segment in the axes of the segment: a force, or a spread load that varies linearly.
 * Loads on the same stretch may be added.
 *
 * @param from where it begins, mm from the start
 * @param to where it ends, mm; equal to {@code from} for a force
 * @param x1 along x: N/mm where it begins, or N
 * @param y1 along y
 * @param z1 along z
 * @param x2 along x: N/mm where it ends, or N again
 * @param y2 along y
 * @param z2 along z
 */
public record BarLoad(
    double from, double to, double x1, double y1, double z1, double x2, double y2, double z2) {

  private static final CompiledProcedure POINT = BeamColumnLoad.POINT.compile();
  private static final CompiledProcedure SPREAD = BeamColumnLoad.DISTRIBUTED.compile();
  private static final CompiledProcedure POINT_CUT = BeamColumnCutLoad.POINT.compile();
  private static final CompiledProcedure SPREAD_CUT = BeamColumnCutLoad.DISTRIBUTED.compile();
  private static final int POINT_CUT_MOMENT = POINT_CUT.slot("h");
  private static final int SPREAD_CUT_MOMENT = SPREAD_CUT.slot("h");
  private static final CompiledProcedure POINT_BEFORE = LoadBefore.POINT.compile();
  private static final CompiledProcedure SPREAD_BEFORE = LoadBefore.DISTRIBUTED.compile();
  private static final int POINT_BEFORE_LOAD = POINT_BEFORE.slot("g_0");
  private static final int SPREAD_BEFORE_LOAD = SPREAD_BEFORE.slot("g_0");
  private static final int POINT_LENGTH = POINT.slot("L");
  private static final int POINT_FORCE = POINT.slot("κ");
  private static final int POINT_TURN = POINT.slot("t_1");
  private static final int SPREAD_LENGTH = SPREAD.slot("L");
  private static final int SPREAD_FORCE = SPREAD.slot("κ");
  private static final int SPREAD_TURN = SPREAD.slot("t_1");

  /** Whether it is a force at one place. */
  public boolean isPoint() {
    return from == to;
  }

  /** Whether the other acts on the same stretch. */
  public boolean isOn(BarLoad other) {
    return from == other.from && to == other.to;
  }

  /** The sum with another on the same stretch. */
  public BarLoad plus(BarLoad other) {
    return new BarLoad(
        from,
        to,
        x1 + other.x1,
        y1 + other.y1,
        z1 + other.z1,
        x2 + other.x2,
        y2 + other.y2,
        z2 + other.z2);
  }

  /** This times a factor. */
  public BarLoad times(double factor) {
    return new BarLoad(
        from, to, factor * x1, factor * y1, factor * z1, factor * x2, factor * y2, factor * z2);
  }

  /**
   * Adds what it turns the ends of the segment by, on simple bearings under axial force.
   *
   * @param length of the segment, mm
   * @param reducedY κ for bending about y, by loads along z
   * @param reducedZ κ for bending about z, by loads along y
   * @param slots room of {@link #room()} places, overwritten
   * @param into t_1y, t_2y, t_1z, t_2z; added to
   */
  public void addTurns(
      double length, double reducedY, double reducedZ, double[] slots, double[] into) {
    addTurns(y1, y2, length, reducedZ, slots, into, 0);
    addTurns(z1, z2, length, reducedY, slots, into, 2);
  }

  private void addTurns(
      double first,
      double second,
      double length,
      double reduced,
      double[] slots,
      double[] into,
      int at) {
    if (first == 0 && second == 0) {
      return;
    }
    int turn;
    if (isPoint()) {
      slots[0] = first;
      slots[1] = from;
      slots[POINT_LENGTH] = length;
      slots[POINT_FORCE] = reduced;
      POINT.evaluate(slots);
      turn = POINT_TURN;
    } else {
      slots[0] = first;
      slots[1] = second;
      slots[2] = from;
      slots[3] = to;
      slots[SPREAD_LENGTH] = length;
      slots[SPREAD_FORCE] = reduced;
      SPREAD.evaluate(slots);
      turn = SPREAD_TURN;
    }
    into[at] += slots[turn];
    into[at + 1] += slots[turn + 1];
  }

  /**
   * Adds the moment that it causes at a cut of the segment on simple bearings under axial force,
   * and its change along the segment.
   *
   * @param x place of the cut, mm
   * @param length of the segment, mm
   * @param reducedY κ for bending about y, by loads along z
   * @param reducedZ κ for bending about z, by loads along y
   * @param slots room of {@link #room()} places, overwritten
   * @param into h_y, h'_y, h_z, h'_z; added to
   */
  void addAtCut(
      double x, double length, double reducedY, double reducedZ, double[] slots, double[] into) {
    addAtCut(y1, y2, x, length, reducedZ, slots, into, 0);
    addAtCut(z1, z2, x, length, reducedY, slots, into, 2);
  }

  private void addAtCut(
      double first,
      double second,
      double x,
      double length,
      double reduced,
      double[] slots,
      double[] into,
      int at) {
    if (first == 0 && second == 0) {
      return;
    }
    CompiledProcedure procedure = isPoint() ? POINT_CUT : SPREAD_CUT;
    int next = 0;
    slots[next++] = first;
    if (!isPoint()) {
      slots[next++] = second;
    }
    slots[next++] = from;
    if (!isPoint()) {
      slots[next++] = to;
    }
    slots[next++] = x;
    slots[next++] = length;
    slots[next] = reduced;
    procedure.evaluate(slots);
    int moment = isPoint() ? POINT_CUT_MOMENT : SPREAD_CUT_MOMENT;
    into[at] += slots[moment];
    into[at + 1] += slots[moment + 1];
  }

  /** The part along x before a cut, N. */
  double alongBefore(double x) {
    return x1 == 0 && x2 == 0 ? 0 : before(x, x1, x2)[0];
  }

  /** The moment about a cut of the part before it, along y (1) or z (2), N·mm. */
  double momentBefore(double x, int axis) {
    return axis == 1 ? before(x, y1, y2)[1] : before(x, z1, z2)[1];
  }

  /** Adds what lies before a cut, as {@link LocalLoad#addBefore} does. */
  void addBefore(double x, double[] into) {
    into[0] += before(x, x1, x2)[0];
    double[] y = before(x, y1, y2);
    double[] z = before(x, z1, z2);
    for (int n = 0; n < 3; n++) {
      into[1 + n] += y[n];
      into[4 + n] += z[n];
    }
  }

  private double[] before(double x, double first, double second) {
    CompiledProcedure procedure = isPoint() ? POINT_BEFORE : SPREAD_BEFORE;
    double[] slots = procedure.newSlots();
    int next = 0;
    slots[next++] = first;
    if (!isPoint()) {
      slots[next++] = second;
    }
    slots[next++] = from;
    if (!isPoint()) {
      slots[next++] = to;
    }
    slots[next] = x;
    procedure.evaluate(slots);
    int effect = isPoint() ? POINT_BEFORE_LOAD : SPREAD_BEFORE_LOAD;
    return new double[] {slots[effect], slots[effect + 1], slots[effect + 2]};
  }

  /** Places that evaluations need. */
  public static double[] room() {
    return new double
        [Math.max(
            Math.max(POINT.slotCount(), SPREAD.slotCount()),
            Math.max(POINT_CUT.slotCount(), SPREAD_CUT.slotCount()))];
  }
}
