package spanledger.verification.en1999;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/**
 * A pin-ended strut with an initial bow of a half sine wave and a moment that is the same all
 * along, solved as it stands: y″ = −κ(N, M), M = N (e₀ sin(πx/L) + y) + M₀, with y(0) = y(L) = 0.
 *
 * <p>For a given deflection at the middle, the force that fits the ends is found by Brent's method
 * on a Runge-Kutta integration of half the strut; the greatest force over all deflections is the
 * capacity.
 */
public final class ElasticPlasticStrut {

  private static final int STEPS = 60;

  private final FibreSection section;
  private final double length;
  private final double bow;
  private final double moment;

  public ElasticPlasticStrut(FibreSection section, double length, double bow, double moment) {
    this.section = section;
    this.length = length;
    this.bow = bow;
    this.moment = moment;
  }

  /** The greatest axial force, N; 0 if the moment alone is too much. */
  public double capacity() {
    double best = 0;
    double at = 0;
    double step = length / 2000;
    for (double middle = step / 4; middle < length / 15; middle *= 1.35) {
      double force = force(middle);
      if (force > best) {
        best = force;
        at = middle;
      }
    }
    for (double part = 0.75; part < 1.35; part += 0.03) {
      best = Math.max(best, force(at * part));
    }
    return best;
  }

  /** The axial force that holds the strut at a deflection of its middle; 0 if there is none. */
  double force(double middle) {
    UnivariateFunction gap = n -> end(n, middle);
    double most = section.squash() * 0.9995;
    if (gap.value(0) <= 0 || gap.value(most) >= 0) {
      return 0;
    }
    return new BrentSolver(1e-7 * most).solve(100, gap, 0, most);
  }

  /** The deflection at the end of the strut, which has to be 0. */
  private double end(double force, double middle) {
    UnivariateFunction curvature = section.curvature(force);
    FirstOrderDifferentialEquations equations =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public void computeDerivatives(double x, double[] y, double[] derivatives) {
            double initial = bow * Math.sin(Math.PI * x / length);
            derivatives[0] = y[1];
            derivatives[1] = -curvature.value(force * (initial + y[0]) + moment);
          }
        };
    double[] state = {middle, 0};
    new ClassicalRungeKuttaIntegrator(length / 2 / STEPS)
        .integrate(equations, length / 2, state, length, state);
    return state[0];
  }
}
