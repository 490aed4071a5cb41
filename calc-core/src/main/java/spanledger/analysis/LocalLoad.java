package spanledger.analysis;

import spanledger.action.LoadAxes;
import spanledger.action.SegmentLoad;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;

/** A segment load with its direction turned into the segment's axes. */
public final class LocalLoad {

  private static final CompiledProcedure DIRECTION = LoadDirection.PROCEDURE.compile();
  private static final int DIRECTION_X = DIRECTION.slot("d_x");
  private static final CompiledProcedure POINT_MOMENTS = LoadMoments.POINT.compile();
  private static final CompiledProcedure SPREAD_MOMENTS = LoadMoments.DISTRIBUTED.compile();
  private static final CompiledProcedure POINT_BEFORE = LoadBefore.POINT.compile();
  private static final CompiledProcedure SPREAD_BEFORE = LoadBefore.DISTRIBUTED.compile();
  private static final int POINT_M0 = POINT_MOMENTS.slot("m_0");
  private static final int SPREAD_M0 = SPREAD_MOMENTS.slot("m_0");
  private static final int POINT_CUT = POINT_BEFORE.slot("x");
  private static final int SPREAD_CUT = SPREAD_BEFORE.slot("x");
  private static final int POINT_G0 = POINT_BEFORE.slot("g_0");
  private static final int SPREAD_G0 = SPREAD_BEFORE.slot("g_0");

  private final SegmentLoad load;
  private final double alongX;
  private final double alongY;
  private final double alongZ;

  /**
   * Checks a load and turns its direction.
   *
   * @throws IllegalArgumentException if it lies beyond the segment or is not a number
   */
  public LocalLoad(SegmentLoad load, SegmentModel model) {
    this.load = load;
    requireOn(load, model);
    Vector d = load.direction();
    if (load.axes() == LoadAxes.LOCAL) {
      alongX = d.x();
      alongY = d.y();
      alongZ = d.z();
    } else {
      double[] slots = DIRECTION.newSlots();
      put(slots, 0, model.axisX());
      put(slots, 3, model.axisY());
      put(slots, 6, model.axisZ());
      put(slots, 9, d);
      DIRECTION.evaluate(slots);
      alongX = slots[DIRECTION_X];
      alongY = slots[DIRECTION_X + 1];
      alongZ = slots[DIRECTION_X + 2];
    }
  }

  private static void put(double[] slots, int at, Vector vector) {
    slots[at] = vector.x();
    slots[at + 1] = vector.y();
    slots[at + 2] = vector.z();
  }

  private static void requireOn(SegmentLoad load, SegmentModel model) {
    double from;
    double to;
    double size;
    if (load instanceof SegmentLoad.Distributed spread) {
      from = spread.from();
      to = spread.to();
      size = spread.intensityFrom() + spread.intensityTo();
      if (!(to > from)) {
        throw new IllegalArgumentException(
            "A load on member "
                + model.segment().name()
                + " ends at "
                + to
                + " mm, where it must go beyond its start at "
                + from
                + " mm.");
      }
    } else {
      SegmentLoad.Point point = (SegmentLoad.Point) load;
      from = point.at();
      to = point.at();
      size = point.force();
    }
    // Lengths that were added up elsewhere may be off by their rounding.
    double slack = 1e-9 * model.length();
    if (!(from >= 0 && to <= model.length() + slack)) {
      throw new IllegalArgumentException(
          "A load on member "
              + model.segment().name()
              + " reaches from "
              + from
              + " mm to "
              + to
              + " mm, but the segment is "
              + model.length()
              + " mm long. Put it on the segment.");
    }
    if (!Double.isFinite(size) || !Double.isFinite(load.direction().norm())) {
      throw new IllegalArgumentException(
          "A load on member " + model.segment().name() + " is not a finite number.");
    }
  }

  public SegmentLoad load() {
    return load;
  }

  /** Where it begins, mm. */
  public double from() {
    return load instanceof SegmentLoad.Distributed spread
        ? spread.from()
        : ((SegmentLoad.Point) load).at();
  }

  /** Where it ends, mm. */
  public double to() {
    return load instanceof SegmentLoad.Distributed spread
        ? spread.to()
        : ((SegmentLoad.Point) load).at();
  }

  /**
   * Adds the load's moments by local axis.
   *
   * @param weight factor on the load
   * @param into 10, as in {@link SegmentModel#LOAD_MOMENTS}, added to
   */
  public void addMoments(double weight, double[] into) {
    double[] slots;
    int at;
    if (load instanceof SegmentLoad.Distributed spread) {
      slots = slots(SPREAD_MOMENTS, spread);
      SPREAD_MOMENTS.evaluate(slots);
      at = SPREAD_M0;
    } else {
      slots = slots(POINT_MOMENTS, (SegmentLoad.Point) load);
      POINT_MOMENTS.evaluate(slots);
      at = POINT_M0;
    }
    for (int k = 0; k < 2; k++) {
      into[k] += weight * alongX * slots[at + k];
    }
    for (int k = 0; k < 4; k++) {
      into[2 + k] += weight * alongY * slots[at + k];
      into[6 + k] += weight * alongZ * slots[at + k];
    }
  }

  /**
   * Adds the effect of the part before a cut.
   *
   * @param x place of the cut, mm
   * @param weight factor on the load
   * @param into g_0x, g_0y, g_1y, g_3y, g_0z, g_1z, g_3z, added to
   */
  public void addBefore(double x, double weight, double[] into) {
    double[] slots;
    int at;
    if (load instanceof SegmentLoad.Distributed spread) {
      slots = slots(SPREAD_BEFORE, spread);
      slots[SPREAD_CUT] = x;
      SPREAD_BEFORE.evaluate(slots);
      at = SPREAD_G0;
    } else {
      slots = slots(POINT_BEFORE, (SegmentLoad.Point) load);
      slots[POINT_CUT] = x;
      POINT_BEFORE.evaluate(slots);
      at = POINT_G0;
    }
    into[0] += weight * alongX * slots[at];
    for (int n = 0; n < 3; n++) {
      into[1 + n] += weight * alongY * slots[at + n];
      into[4 + n] += weight * alongZ * slots[at + n];
    }
  }

  /** The same with its parts along the axes of the segment. */
  public BarLoad inBarAxes() {
    double first = load instanceof SegmentLoad.Distributed d ? d.intensityFrom() : 0;
    double second = load instanceof SegmentLoad.Distributed d ? d.intensityTo() : 0;
    if (load instanceof SegmentLoad.Point point) {
      first = point.force();
      second = first;
    }
    return new BarLoad(
        from(),
        to(),
        alongX * first,
        alongY * first,
        alongZ * first,
        alongX * second,
        alongY * second,
        alongZ * second);
  }

  /** The inputs q_1, q_2, a, b come first in both procedures. */
  private static double[] slots(CompiledProcedure procedure, SegmentLoad.Distributed load) {
    double[] slots = procedure.newSlots();
    slots[0] = load.intensityFrom();
    slots[1] = load.intensityTo();
    slots[2] = load.from();
    slots[3] = load.to();
    return slots;
  }

  /** The inputs P, a come first in both procedures. */
  private static double[] slots(CompiledProcedure procedure, SegmentLoad.Point load) {
    double[] slots = procedure.newSlots();
    slots[0] = load.force();
    slots[1] = load.at();
    return slots;
  }
}
