package spanledger.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * What a state does along one segment: internal forces and deflections at any place, enlarged by
 * its axial force between the nodes as well. Values come from {@link BeamColumnCut}. Immutable; not
 * for several threads at once.
 */
public final class BeamColumnResponse {

  private static final CompiledProcedure CUT = BeamColumnCut.PROCEDURE.compile();
  private static final int[] FROM_END = {0, 3, 4, 10, 5, 11};
  private static final int[] END = slots(CUT, "F_x1", "M_x1", "M_y1", "M_y2", "M_z1", "M_z2");
  private static final int[] FORCES = slots(CUT, "N", "V_y", "V_z", "T", "M_y", "M_z");
  private static final int[] LOAD = slots(CUT, "h_y", "h'_y", "h_z", "h'_z");
  private static final int[] PRESSED = slots(CUT, "κ_y", "κ_z", "β_y", "β_z");
  private static final int PLACE = CUT.slot("x");
  private static final int LENGTH = CUT.slot("L");
  private static final int ALONG = CUT.slot("g_0x");

  private static final CompiledProcedure REST = BeamColumnDeflection.AT_REST.compile();
  private static final int REST_Y = REST.slot("F_y1");
  private static final int REST_Z = REST.slot("F_z1");
  private static final CompiledProcedure BENT = BeamColumnDeflection.PROCEDURE.compile();
  private static final int BENT_PLACE = BENT.slot("x");
  private static final int BENT_Y = BENT.slot("d_y");
  private static final int BENT_Z = BENT.slot("d_z");
  private static final int[] BENT_BEFORE = {BENT.slot("g_1y"), BENT.slot("g_1z")};
  private static final int[] BENT_MOMENTS = {BENT.slot("M_y"), BENT.slot("M_z")};
  private static final int[] BENT_REST = {BENT.slot("d_y0"), BENT.slot("d_z0")};
  private static final String[] END_MOMENTS = {"M_y1", "M_y2", "M_z1", "M_z2"};
  private static final int[] REST_END = slots(REST, END_MOMENTS);
  private static final int[] BENT_END = slots(BENT, END_MOMENTS);
  private static final int[] FROM_END_MOMENTS = {4, 10, 5, 11};
  private static final String[] LOAD_MOMENTS = {"m_0y", "m_1y", "m_0z", "m_1z"};
  private static final int[] REST_LOAD = slots(REST, LOAD_MOMENTS);
  private static final int[] BENT_LOAD = slots(BENT, LOAD_MOMENTS);
  private static final int REST_LENGTH = REST.slot("L");
  private static final int BENT_LENGTH = BENT.slot("L");
  private static final int BENT_FORCE = BENT.slot("N");
  private static final int[] BENT_PRESSED = slots(BENT, "κ_y", "κ_z");
  private static final int[] FROM_LOAD_MOMENTS = {2, 3, 6, 7};

  private static final int PARTS = 8;

  private static final int FALSE_POSITIONS = 3;

  /** Beyond a load at its own place, mm; a spreadsheet still tells the two apart. */
  private static final double JUST_PAST = 1e-6;

  private final SegmentModel model;
  private final double[] slots = CUT.newSlots();
  private final double[] resting = REST.newSlots();
  private final double[] bent = BENT.newSlots();
  private final double[] room = BarLoad.room();
  private final double meanForce;
  private final double[] endForces;
  private final List<BarLoad> loads;
  private final double[] moments;

  /**
   * Puts a response together.
   *
   * @param bar the segment with its force set
   * @param meanForce the mean axial force, N, tension positive
   * @param endForces twelve, kept
   * @param loads on the segment
   * @param moments the load moments, ten, kept
   */
  public BeamColumnResponse(
      BeamColumnModel bar,
      double meanForce,
      double[] endForces,
      List<BarLoad> loads,
      double[] moments) {
    this.model = bar.model();
    this.meanForce = meanForce;
    this.endForces = endForces;
    this.loads = List.copyOf(loads);
    this.moments = moments;
    slots[LENGTH] = model.length();
    slots[PRESSED[0]] = bar.reducedForce(0);
    slots[PRESSED[1]] = bar.reducedForce(1);
    slots[PRESSED[2]] = bar.stiffnessValue("β_y");
    slots[PRESSED[3]] = bar.stiffnessValue("β_z");
    for (int i = 0; i < END.length; i++) {
      slots[END[i]] = endForces[FROM_END[i]];
    }
    for (int i = 0; i < END_MOMENTS.length; i++) {
      double moment = endForces[FROM_END_MOMENTS[i]];
      resting[REST_END[i]] = moment;
      bent[BENT_END[i]] = moment;
      resting[REST_LOAD[i]] = moments[FROM_LOAD_MOMENTS[i]];
      bent[BENT_LOAD[i]] = moments[FROM_LOAD_MOMENTS[i]];
    }
    resting[REST_LENGTH] = model.length();
    REST.evaluate(resting);
    bent[BENT_LENGTH] = model.length();
    bent[BENT_FORCE] = bar.force();
    bent[BENT_PRESSED[0]] = bar.reducedForce(0);
    bent[BENT_PRESSED[1]] = bar.reducedForce(1);
  }

  private static int[] slots(CompiledProcedure procedure, String... symbols) {
    return Arrays.stream(symbols).mapToInt(procedure::slot).toArray();
  }

  /** Whether loads act on the segment. */
  public boolean isLoaded() {
    return !loads.isEmpty();
  }

  /** Whether the axial force bends the segment: the state is of second order. */
  public boolean isBent() {
    return slots[PRESSED[0]] != 0 || slots[PRESSED[1]] != 0;
  }

  /** The mechanics of the segment. */
  public SegmentModel model() {
    return model;
  }

  /** The mean axial force, N, tension positive. */
  public double meanForce() {
    return meanForce;
  }

  /** Where loads begin, end or stand, with both ends of the segment, in order, mm. */
  public double[] breaks() {
    List<Double> places = new ArrayList<>(List.of(0.0, model.length()));
    for (BarLoad load : loads) {
      places.add(load.from());
      places.add(Math.min(load.to(), model.length()));
    }
    return places.stream().mapToDouble(x -> x).sorted().distinct().toArray();
  }

  /**
   * Places to look at for the worst of an effect, mm: both sides of every break and eighths
   * between; a peak is then narrowed down {@link #around} the worst.
   */
  public double[] stations() {
    double[] breaks = breaks();
    List<Double> places = new ArrayList<>();
    places.add(0.0);
    for (int i = 0; i + 1 < breaks.length; i++) {
      double start = i == 0 ? 0 : breaks[i] + JUST_PAST;
      double part = (breaks[i + 1] - start) / PARTS;
      for (int k = i == 0 ? 1 : 0; k < PARTS; k++) {
        places.add(start + k * part);
      }
      places.add(breaks[i + 1]);
    }
    return places.stream().mapToDouble(x -> x).toArray();
  }

  /** The same for internal forces: without load and axial force both ends suffice. */
  public double[] forceStations() {
    return isLoaded() || isBent() ? stations() : breaks();
  }

  /** {@link #forceStations} with the places where a bending moment turns, in order, mm. */
  public double[] turningStations() {
    double[] places = forceStations();
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      all.add(places[i]);
      if (i + 1 < places.length && places[i + 1] - places[i] > 2 * JUST_PAST) {
        for (int axis = 1; axis <= 2; axis++) {
          turn(places[i], places[i + 1], axis, all);
        }
      }
    }
    return all.stream().mapToDouble(x -> x).sorted().distinct().toArray();
  }

  /** Where the shear changes its sign, by false position: it is all but a straight line there. */
  private void turn(double from, double to, int axis, List<Double> into) {
    double low = from;
    double high = to;
    double atLow = shear(low, axis);
    double atHigh = shear(high, axis);
    if (!(atLow * atHigh < 0)) {
      return;
    }
    double place = low;
    for (int round = 0; round < FALSE_POSITIONS; round++) {
      place = (low * atHigh - high * atLow) / (atHigh - atLow);
      double here = shear(place, axis);
      if (here * atLow > 0) {
        low = place;
        atLow = here;
      } else {
        high = place;
        atHigh = here;
      }
    }
    into.add(place);
  }

  private double shear(double x, int axis) {
    InternalForces forces = at(x, Side.BEFORE);
    return axis == 1 ? forces.shearY() : forces.shearZ();
  }

  /** Between which places, mm, an effect peaks that was worst at one of the {@link #stations}. */
  public double[] around(double x) {
    double[] breaks = breaks();
    int next = 1;
    while (next < breaks.length - 1 && x > breaks[next]) {
      next++;
    }
    double start = next == 1 ? 0 : breaks[next - 1] + JUST_PAST;
    double part = (breaks[next] - start) / PARTS;
    return new double[] {Math.max(start, x - part), Math.min(breaks[next], x + part)};
  }

  /**
   * Internal forces.
   *
   * @param x mm from the segment's start, from 0 to its length
   */
  public InternalForces at(double x, Side side) {
    double place = side == Side.AFTER ? Math.nextUp(x) : x;
    double[] atCut = new double[4];
    double along = 0;
    for (BarLoad load : loads) {
      load.addAtCut(place, model.length(), slots[PRESSED[0]], slots[PRESSED[1]], room, atCut);
      along += load.alongBefore(place);
    }
    slots[PLACE] = place;
    slots[ALONG] = along;
    for (int i = 0; i < LOAD.length; i++) {
      slots[LOAD[i]] = atCut[i];
    }
    CUT.evaluate(slots);
    return new InternalForces(
        slots[FORCES[0]],
        slots[FORCES[1]],
        slots[FORCES[2]],
        slots[FORCES[3]],
        slots[FORCES[4]],
        slots[FORCES[5]]);
  }

  /** Deflection from the chord along the segment's y, mm. */
  public double deflectionY(double x) {
    deflect(x);
    return bent[BENT_Y];
  }

  /** Deflection from the chord along the segment's z, mm. */
  public double deflectionZ(double x) {
    deflect(x);
    return bent[BENT_Z];
  }

  private void deflect(double x) {
    InternalForces forces = at(x, Side.BEFORE);
    double[] before = new double[CutForces.BEFORE];
    for (BarLoad load : loads) {
      load.addBefore(x, before);
    }
    double[] end = new double[CutForces.FORCES];
    end[1] = resting[REST_Y];
    end[2] = resting[REST_Z];
    end[4] = endForces[4];
    end[5] = endForces[5];
    double[] both = new double[2];
    CutForces.deflections(model, x, end, before, moments, both);
    bent[BENT_PLACE] = x;
    bent[BENT_BEFORE[0]] = before[2];
    bent[BENT_BEFORE[1]] = before[5];
    bent[BENT_MOMENTS[0]] = forces.momentY();
    bent[BENT_MOMENTS[1]] = forces.momentZ();
    bent[BENT_REST[0]] = both[0];
    bent[BENT_REST[1]] = both[1];
    BENT.evaluate(bent);
  }
}
