package spanledger.verification.en1999;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * A section as layers across the axis of bending, elastic and perfectly plastic; compression and
 * the curvature that compresses positive v are positive.
 */
public final class FibreSection {

  private static final int LAYERS = 16;
  private static final int POINTS = 120;
  private static final int CURVE_POINTS = 1500;

  /** Strain that stays at the proof strength. */
  private static final double PROOF = 0.002;

  private final double modulus;
  private final double strength;
  private final @Nullable UnivariateFunction curve;
  private final List<double[]> layers = new ArrayList<>();
  private double area;
  private double depth;

  /** Elastic and perfectly plastic. */
  public FibreSection(double modulus, double strength) {
    this(modulus, strength, 0);
  }

  /**
   * @param exponent of Ramberg and Osgood; 0 for perfectly plastic
   */
  FibreSection(double modulus, double strength, double exponent) {
    this.modulus = modulus;
    this.strength = strength;
    this.curve = exponent == 0 ? null : rounded(exponent);
  }

  /** Adds a rectangle between two levels. */
  public FibreSection add(double width, double from, double to) {
    double height = (to - from) / LAYERS;
    for (int i = 0; i < LAYERS; i++) {
      layers.add(new double[] {from + (i + 0.5) * height, width * height});
    }
    area += width * (to - from);
    depth = Math.max(depth, Math.max(Math.abs(from), Math.abs(to)));
    return this;
  }

  public double squash() {
    return area * strength;
  }

  private double stress(double strain) {
    return curve == null
        ? Math.max(-strength, Math.min(strength, modulus * strain))
        : Math.signum(strain) * curve.value(Math.abs(strain));
  }

  /** σ over ε = σ/E + 0.002 (σ/f_o)ⁿ, from strains at many stresses. */
  private UnivariateFunction rounded(double exponent) {
    double[] stresses = new double[CURVE_POINTS];
    double[] strains = new double[CURVE_POINTS];
    for (int i = 0; i < CURVE_POINTS; i++) {
      stresses[i] = 1.5 * strength * i / (CURVE_POINTS - 1);
      strains[i] = stresses[i] / modulus + PROOF * Math.pow(stresses[i] / strength, exponent);
    }
    return new LinearInterpolator().interpolate(strains, stresses);
  }

  private double force(double strain, double curvature) {
    double sum = 0;
    for (double[] layer : layers) {
      sum += stress(strain + curvature * layer[0]) * layer[1];
    }
    return sum;
  }

  private double moment(double strain, double curvature) {
    double sum = 0;
    for (double[] layer : layers) {
      sum += stress(strain + curvature * layer[0]) * layer[1] * layer[0];
    }
    return sum;
  }

  /** The moment at a curvature under an axial force. */
  double moment(double force, double curvature, BrentSolver solver) {
    double reach = strength / modulus + 10 * PROOF + Math.abs(curvature) * depth;
    double strain = solver.solve(200, e -> force(e, curvature) - force, -reach, reach);
    return moment(strain, curvature);
  }

  /** The full plastic moment under an axial force. */
  public double plasticMoment(double force) {
    return moment(force, 1000 * strength / modulus / depth, new BrentSolver(1e-13));
  }

  /**
   * The curvature for each moment of at least 0 under an axial force; at most thirty times that of
   * first yield, where the moment has long been the plastic one.
   */
  UnivariateFunction curvature(double force) {
    BrentSolver solver = new BrentSolver(1e-13);
    double[] moments = new double[POINTS + 1];
    double[] curvatures = new double[POINTS + 1];
    double yield = strength / modulus / depth;
    for (int i = 1; i <= POINTS; i++) {
      double part = (double) i / POINTS;
      curvatures[i] = yield * 30 * part * part;
      moments[i] =
          Math.max(moment(force, curvatures[i], solver), moments[i - 1] * (1 + 1e-12) + 1e-9);
    }
    UnivariateFunction inverse = new LinearInterpolator().interpolate(moments, curvatures);
    return m -> m >= moments[POINTS] ? curvatures[POINTS] : inverse.value(Math.max(m, 0));
  }
}
