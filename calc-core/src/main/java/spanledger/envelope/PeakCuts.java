package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.WeightedLoad;
import spanledger.section.SectionProperties;

/**
 * The cuts of a segment at which a sum of normal stresses, or a shear, may peak.
 *
 * <p>They are the ends, both sides of every place where a load begins, ends or stands, and between
 * these the places where the slope of ±N/A ± M_y/W_y ± M_z/W_z, with or without N, is zero for any
 * signs. Between loads that vary linearly the slope is at most quadratic, so three samples give it
 * exactly. Where the shear stress changes and is not small beside the normal stress, the equivalent
 * stress may peak between these; there, evenly spaced cuts are added.
 */
final class PeakCuts {

  /**
   * A cut just past a point load, mm: too near to change any force, too far for a spreadsheet,
   * which compares 14 digits or so, to take it for the load's own place.
   */
  static final double JUST_PAST = 1e-6;

  /** Change of 3τ², per σ², from which on it may shift the peak of the equivalent stress. */
  private static final double NOTABLE = 1e-3;

  private static final int EVEN = 8;

  private static final double[] SAMPLES = {0.25, 0.5, 0.75};
  private static final int[][] SIGNS = {{1, 1}, {1, -1}, {-1, 1}, {-1, -1}};

  private final CutForces cuts = new CutForces();
  private final double[] forces = new double[CutForces.COUNT];
  private final double[] axial = new double[SAMPLES.length];
  private final double[] aboutY = new double[SAMPLES.length];
  private final double[] aboutZ = new double[SAMPLES.length];

  /**
   * The cuts, mm from the segment's start, increasing.
   *
   * @param endForces twelve per segment of the frame; not modified
   * @param loads on the segment, with their factors
   */
  List<Double> of(SegmentModel model, double[] endForces, List<WeightedLoad> loads) {
    double length = model.length();
    TreeSet<Double> breaks = new TreeSet<>(List.of(0.0, length));
    for (WeightedLoad load : loads) {
      breaks.add(Math.min(load.load().from(), length));
      breaks.add(Math.min(load.load().to(), length));
    }
    TreeSet<Double> found = new TreeSet<>(breaks);
    Double start = null;
    for (double end : breaks) {
      if (start != null && end > start) {
        if (start > 0) {
          found.add(start + JUST_PAST);
        }
        addStationary(model, endForces, loads, start, end, found);
      }
      start = end;
    }
    return new ArrayList<>(found);
  }

  private void addStationary(
      SegmentModel model,
      double[] endForces,
      List<WeightedLoad> loads,
      double start,
      double end,
      Set<Double> found) {
    SectionProperties section = model.segment().member().section().properties();
    double span = end - start;
    int at = model.segment().index() * SegmentModel.ENDS;
    double greatestNormal = 0;
    double greatestShear = 0;
    double leastShear = Double.POSITIVE_INFINITY;
    for (int i = 0; i < SAMPLES.length; i++) {
      cuts.at(endForces, at, loads, start + SAMPLES[i] * span, forces, 0);
      greatestNormal = Math.max(greatestNormal, normal(section));
      greatestShear = Math.max(greatestShear, shear(section));
      leastShear = Math.min(leastShear, shear(section));
      axial[i] = forces[0] / section.area();
      aboutY[i] = forces[2] / section.elasticModulusY();
      aboutZ[i] = -forces[1] / section.elasticModulusZ();
    }
    double change = 3 * (greatestShear * greatestShear - leastShear * leastShear);
    if (change > NOTABLE * greatestNormal * greatestNormal) {
      for (int i = 1; i < EVEN; i++) {
        found.add(start + span * i / EVEN);
      }
    }
    // N is at most quadratic, so its slope is linear in the part t of the span.
    double bend = 8 * (axial[0] - 2 * axial[1] + axial[2]);
    double slopeAtStart = 2 * (axial[2] - axial[0]) - bend;
    double[] slope = new double[SAMPLES.length];
    boolean axialChanges = bend != 0 || slopeAtStart != 0;
    for (int withAxial = axialChanges ? 1 : 0; withAxial >= 0; withAxial--) {
      for (int[] sign : SIGNS) {
        for (int i = 0; i < SAMPLES.length; i++) {
          slope[i] =
              withAxial * (slopeAtStart + 2 * bend * SAMPLES[i]) / span
                  + sign[0] * aboutY[i]
                  + sign[1] * aboutZ[i];
        }
        addRoots(slope, start, span, found);
      }
    }
  }

  private double normal(SectionProperties section) {
    return Math.abs(forces[0]) / section.area()
        + Math.abs(forces[4]) / section.elasticModulusY()
        + Math.abs(forces[5]) / section.elasticModulusZ();
  }

  private double shear(SectionProperties section) {
    return Math.abs(forces[1]) / section.peakShearAreaY()
        + Math.abs(forces[2]) / section.peakShearAreaZ()
        + Math.abs(forces[3]) / section.torsionModulus();
  }

  /** Adds the zeros of the quadratic through the three samples. */
  private static void addRoots(double[] f, double start, double span, Set<Double> found) {
    double a = 8 * (f[0] - 2 * f[1] + f[2]);
    double b = 2 * (f[2] - f[0]) - a;
    double c = f[1] - a / 4 - b / 2;
    double scale = Math.abs(f[0]) + Math.abs(f[1]) + Math.abs(f[2]);
    if (Math.abs(a) <= 1e-12 * scale) {
      if (Math.abs(b) > 1e-12 * scale) {
        addInside(-c / b, start, span, found);
      }
      return;
    }
    double discriminant = b * b - 4 * a * c;
    if (discriminant >= 0) {
      double q = -0.5 * (b + Math.copySign(Math.sqrt(discriminant), b));
      addInside(q / a, start, span, found);
      if (q != 0) {
        addInside(c / q, start, span, found);
      }
    }
  }

  private static void addInside(double part, double start, double span, Set<Double> found) {
    if (part > 0 && part < 1) {
      found.add(start + part * span);
    }
  }
}
