package spanledger.overturning;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import spanledger.frame.Vector;

/** Finds the level direction in which something is greatest. */
final class WorstDirection {

  /** How many directions are looked at before the best of them is refined. */
  private static final int LOOKS = 360;

  private static final double RELATIVE = 1e-10;
  private static final double ABSOLUTE = 1e-12;
  private static final int MOST_TRIES = 500;

  private WorstDirection() {}

  /** The angle from X towards Y, rad, at which a function of it is greatest. */
  static double of(DoubleUnaryOperator value) {
    double step = 2 * Math.PI / LOOKS;
    double best = 0;
    for (int i = 1; i < LOOKS; i++) {
      if (value.applyAsDouble(i * step) > value.applyAsDouble(best)) {
        best = i * step;
      }
    }
    double refined =
        new BrentOptimizer(RELATIVE, ABSOLUTE)
            .optimize(
                new MaxEval(MOST_TRIES),
                GoalType.MAXIMIZE,
                new UnivariateObjectiveFunction(value::applyAsDouble),
                new SearchInterval(best - step, best + step))
            .getPoint();
    return value.applyAsDouble(refined) > value.applyAsDouble(best) ? refined : best;
  }

  /** A level direction by its angle from X towards Y. */
  static Vector at(double angle) {
    return new Vector(Math.cos(angle), Math.sin(angle), 0);
  }
}
