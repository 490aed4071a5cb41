package spanledger.analysis;

import java.util.Arrays;
import java.util.List;

/**
 * What loads on a segment add to its internal forces before the end forces are counted: cubics
 * between the places where loads begin, end or stand. Immutable.
 */
final class LoadCurve {

  /** Coefficients of each cubic. */
  static final int TERMS = 4;

  private static final int PER_PIECE = CutForces.FORCES * TERMS;
  private static final SampledPolynomial CUBIC = new SampledPolynomial(TERMS);
  private static final double[] NO_END_FORCES = new double[CutForces.FORCES];

  /** Places closer than this share of the length count as one. */
  private static final double SAME_PLACE = 1e-12;

  private final double[] breaks;
  private final double[] coefficients;

  private LoadCurve(double[] breaks, double[] coefficients) {
    this.breaks = breaks;
    this.coefficients = coefficients;
  }

  /** Without loads. */
  static LoadCurve none(double length) {
    return new LoadCurve(new double[] {0, length}, new double[0]);
  }

  /** Of loads on one segment, each with factor 1. */
  static LoadCurve of(List<LocalLoad> loads, double length) {
    if (loads.isEmpty()) {
      return none(length);
    }
    double[] breaks = new double[2 + 2 * loads.size()];
    breaks[1] = length;
    for (int i = 0; i < loads.size(); i++) {
      breaks[2 + 2 * i] = loads.get(i).from();
      breaks[3 + 2 * i] = loads.get(i).to();
    }
    breaks = distinct(breaks, length);
    double[] coefficients = new double[PER_PIECE * (breaks.length - 1)];
    double[][] values = new double[CutForces.FORCES][TERMS];
    double[] before = new double[CutForces.BEFORE];
    double[] forces = new double[CutForces.FORCES];
    for (int piece = 0; piece + 1 < breaks.length; piece++) {
      for (int i = 0; i < TERMS; i++) {
        double x = breaks[piece] + CUBIC.place(i) * (breaks[piece + 1] - breaks[piece]);
        Arrays.fill(before, 0);
        for (LocalLoad load : loads) {
          load.addBefore(x, 1, before);
        }
        CutForces.sectionForces(x, NO_END_FORCES, before, forces);
        for (int f = 0; f < forces.length; f++) {
          values[f][i] = forces[f];
        }
      }
      for (int f = 0; f < forces.length; f++) {
        CUBIC.fit(values[f], coefficients, PER_PIECE * piece + TERMS * f);
      }
    }
    return new LoadCurve(breaks, coefficients);
  }

  /** The sum of several curves of the same segment, each with its factor. */
  static LoadCurve sum(LoadCurve[] curves, double[] factors) {
    double[] breaks = curves[0].breaks;
    double length = breaks[breaks.length - 1];
    boolean any = false;
    for (LoadCurve curve : curves) {
      any |= curve.coefficients.length > 0;
      if (curve.breaks.length > 2 && !Arrays.equals(curve.breaks, breaks)) {
        double[] both = Arrays.copyOf(breaks, breaks.length + curve.breaks.length);
        System.arraycopy(curve.breaks, 0, both, breaks.length, curve.breaks.length);
        breaks = distinct(both, length);
      }
    }
    if (!any) {
      return curves[0];
    }
    double[] coefficients = new double[PER_PIECE * (breaks.length - 1)];
    if (breaks.length == 2) {
      for (int i = 0; i < curves.length; i++) {
        double[] own = curves[i].coefficients;
        for (int k = 0; k < own.length; k++) {
          coefficients[k] += factors[i] * own[k];
        }
      }
      return new LoadCurve(breaks, coefficients);
    }
    for (int i = 0; i < curves.length; i++) {
      if (curves[i].coefficients.length > 0 && factors[i] != 0) {
        curves[i].addTo(breaks, coefficients, factors[i]);
      }
    }
    return new LoadCurve(breaks, coefficients);
  }

  private static double[] distinct(double[] places, double length) {
    double[] sorted = places.clone();
    Arrays.sort(sorted);
    int count = 1;
    for (int i = 1; i < sorted.length; i++) {
      if (sorted[i] - sorted[count - 1] > SAME_PLACE * length) {
        sorted[count++] = sorted[i];
      }
    }
    // The last place is the end of the segment, whatever was rounded on the way.
    sorted[count - 1] = length;
    return Arrays.copyOf(sorted, count);
  }

  /** Adds this, piece by piece, on a grid that has at least all breaks of this. */
  private void addTo(double[] grid, double[] into, double factor) {
    int own = 0;
    for (int piece = 0; piece + 1 < grid.length; piece++) {
      double middle = 0.5 * (grid[piece] + grid[piece + 1]);
      while (breaks[own + 1] < middle) {
        own++;
      }
      double span = breaks[own + 1] - breaks[own];
      double shift = (grid[piece] - breaks[own]) / span;
      double scale = (grid[piece + 1] - grid[piece]) / span;
      for (int f = 0; f < CutForces.FORCES; f++) {
        int from = PER_PIECE * own + TERMS * f;
        double c0 = coefficients[from];
        double c1 = coefficients[from + 1];
        double c2 = coefficients[from + 2];
        double c3 = coefficients[from + 3];
        int to = PER_PIECE * piece + TERMS * f;
        into[to] += factor * (c0 + shift * (c1 + shift * (c2 + shift * c3)));
        into[to + 1] += factor * scale * (c1 + shift * (2 * c2 + shift * 3 * c3));
        into[to + 2] += factor * scale * scale * (c2 + shift * 3 * c3);
        into[to + 3] += factor * scale * scale * scale * c3;
      }
    }
  }

  /**
   * How far each force departs from the straight line between neighbouring cuts, at most: what
   * bends within a piece, and what jumps or kinks between pieces.
   */
  void departures(double[] cuts, double[] into) {
    Arrays.fill(into, 0);
    if (coefficients.length == 0) {
      return;
    }
    for (int f = 0; f < into.length; f++) {
      for (int cut = 0; cut + 1 < cuts.length; cut++) {
        into[f] = Math.max(into[f], departure(f, cuts[cut], cuts[cut + 1]));
      }
    }
  }

  private double departure(int force, double from, double to) {
    double low = value(force, from, Side.AFTER);
    double high = value(force, to, Side.BEFORE);
    double greatest = 0;
    for (int piece = 0; piece < pieces(); piece++) {
      double start = Math.max(from, breaks[piece]);
      double end = Math.min(to, breaks[piece + 1]);
      if (end > start) {
        // A polynomial lies in the hull of its control points.
        double span = breaks[piece + 1] - breaks[piece];
        double t = (start - breaks[piece]) / span;
        double s = (end - start) / span;
        int at = PER_PIECE * piece + TERMS * force;
        double c0 = coefficients[at];
        double c1 = coefficients[at + 1];
        double c2 = coefficients[at + 2];
        double c3 = coefficients[at + 3];
        double b0 = c0 + t * (c1 + t * (c2 + t * c3));
        double d1 = s * (c1 + t * (2 * c2 + t * 3 * c3));
        double d2 = s * s * (c2 + t * 3 * c3);
        double d3 = s * s * s * c3;
        double[] control = {b0, b0 + d1 / 3, b0 + 2 * d1 / 3 + d2 / 3, b0 + d1 + d2 + d3};
        for (int k = 0; k < control.length; k++) {
          double x = start + (end - start) * k / 3;
          double line = low + (high - low) * (x - from) / (to - from);
          greatest = Math.max(greatest, Math.abs(control[k] - line));
        }
      }
    }
    return greatest;
  }

  private double value(int force, double x, Side side) {
    int piece = pieceAt(x, side);
    double t = (x - breaks[piece]) / (breaks[piece + 1] - breaks[piece]);
    double sum = 0;
    for (int k = TERMS - 1; k >= 0; k--) {
      sum = sum * t + coefficient(piece, force, k);
    }
    return sum;
  }

  /** How many pieces. */
  int pieces() {
    return breaks.length - 1;
  }

  /** Where a piece begins, mm; the end of the last piece for {@code piece} = {@link #pieces()}. */
  double breakAt(int piece) {
    return breaks[piece];
  }

  /** The piece that holds a place; the earlier one at a break for {@link Side#BEFORE}. */
  int pieceAt(double x, Side side) {
    int piece = 0;
    while (piece + 1 < pieces()
        && (side == Side.BEFORE ? breaks[piece + 1] < x : breaks[piece + 1] <= x)) {
      piece++;
    }
    return piece;
  }

  /**
   * Coefficient of one internal force (in the order of {@link CutForces}) on one piece, over 0..1.
   */
  double coefficient(int piece, int force, int term) {
    return coefficients.length == 0 ? 0 : coefficients[PER_PIECE * piece + TERMS * force + term];
  }
}
