package spanledger.analysis;

import java.util.ArrayList;
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
  private static final int[] END = slots("F_x1", "M_x1", "M_y1", "M_y2", "M_z1", "M_z2");
  private static final int[] FORCES = slots("N", "V_y", "V_z", "T", "M_y", "M_z");
  private static final int[] LOAD = slots("h_y", "h'_y", "h_z", "h'_z");
  private static final int[] PRESSED = slots("κ_y", "κ_z", "β_y", "β_z");
  private static final int PLACE = CUT.slot("x");
  private static final int LENGTH = CUT.slot("L");
  private static final int ALONG = CUT.slot("g_0x");

  /** Below this reduced force a bar bends as without axial force, within 1e-7. */
  private static final double UNBENT = 1e-6;

  private final SegmentModel model;
  private final double[] slots = CUT.newSlots();
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
  }

  private static int[] slots(String... symbols) {
    int[] slots = new int[symbols.length];
    for (int i = 0; i < symbols.length; i++) {
      slots[i] = CUT.slot(symbols[i]);
    }
    return slots;
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
    return Math.abs(slots[PRESSED[1]]) < UNBENT
        ? unbent(x)[0]
        : (at(x, Side.BEFORE).momentZ() - atRest(x, 5, -1)) / meanForce;
  }

  /** Deflection from the chord along the segment's z, mm. */
  public double deflectionZ(double x) {
    return Math.abs(slots[PRESSED[0]]) < UNBENT
        ? unbent(x)[1]
        : (atRest(x, 4, 1) - at(x, Side.BEFORE).momentY()) / meanForce;
  }

  /** The moment that the same end moments and loads would cause without axial force. */
  private double atRest(double x, int moment, int sign) {
    double share = x / model.length();
    int m = sign > 0 ? 6 : 2;
    double before = 0;
    for (BarLoad load : loads) {
      before += load.momentBefore(x, sign > 0 ? 2 : 1);
    }
    double bearing = moments[m] - moments[m + 1] / model.length();
    return endForces[moment + 6] * share
        - endForces[moment] * (1 - share)
        + sign * (bearing * x - before);
  }

  private double[] unbent(double x) {
    double[] before = new double[CutForces.BEFORE];
    for (BarLoad load : loads) {
      load.addBefore(x, before);
    }
    // As on the bar at rest: the part of the chord's turn taken out of the end forces.
    double[] end = new double[CutForces.FORCES];
    double length = model.length();
    end[4] = endForces[4];
    end[5] = endForces[5];
    double farZ = (endForces[4] + endForces[10] - moments[7]) / length;
    double farY = -(endForces[5] + endForces[11] + moments[3]) / length;
    end[2] = -moments[6] - farZ;
    end[1] = -moments[2] - farY;
    double[] both = new double[2];
    CutForces.deflections(model, x, end, before, moments, both);
    return both;
  }
}
