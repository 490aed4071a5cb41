package spanledger.overturning;

import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import spanledger.action.EquilibriumRule;
import spanledger.action.SelfWeight;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;

/**
 * Sliding under one rule, with the variable loads where they are worst.
 *
 * @param rule the rule
 * @param leading what leads, and where it stands, in words
 * @param variable the variable loads that slide
 * @param permanentLevel level forces among the permanent loads
 * @param weight permanent weight, N
 * @param sway notional level force per weight; 0 if the rule has none
 * @param ground how the ground lies
 */
public record SlidingCase(
    EquilibriumRule rule,
    String leading,
    List<VariableLoad> variable,
    List<PlacedForce> permanentLevel,
    double weight,
    double sway,
    Standing.Ground ground) {

  /** How the friction needed is found. */
  public static final Procedure BALANCE = SlidingBalance.PROCEDURE;

  /** How it is set against the friction that there is. */
  public static final Procedure USE = SlidingBalance.USE;

  private static final double MOST_MASS = 1e9;
  private static final double MASS_ACCURACY = 1e-9;
  private static final int MOST_TRIES = 1000;

  public SlidingCase {
    variable = List.copyOf(variable);
    permanentLevel = List.copyOf(permanentLevel);
  }

  /** The level forces with their factors, N. */
  public Vector level() {
    Vector sum = Vector.ZERO;
    for (PlacedForce force : permanentLevel) {
      sum = sum.plus(force.force().times(rule.overturning().value()));
    }
    for (VariableLoad load : variable) {
      if (load.acting() instanceof PlacedForce force) {
        sum = sum.plus(force.force().times(load.factor().value()));
      }
    }
    return new Vector(sum.x(), sum.y(), 0);
  }

  /** The upward forces with their factors, N. */
  public double upward() {
    double sum = 0;
    for (VariableLoad load : variable) {
      if (load.acting() instanceof PlacedForce force) {
        sum += load.factor().value() * Math.max(0, force.force().z());
      }
    }
    return sum;
  }

  /** The friction coefficient that is needed. */
  public double friction() {
    return value("μ_req", weight);
  }

  /** The force along the ground, N. */
  public double along() {
    return value("T", weight);
  }

  /** The force onto the ground, N. */
  public double onto() {
    return value("N", weight);
  }

  /** The friction needed per friction that there is. */
  public double use(Standing.Friction available) {
    return SlidingBalance.COMPILED_USE
        .run(friction(), available.coefficient())[SlidingBalance.COMPILED_USE.slot("η")];
  }

  private double value(String symbol, double permanent) {
    CompiledProcedure balance = SlidingBalance.COMPILED;
    Vector level = level();
    return balance
        .run(
            permanent,
            rule.holding().value(),
            rule.overturning().value(),
            sway,
            ground.slope(),
            ground.downhill().x(),
            ground.downhill().y(),
            level.x(),
            level.y(),
            upward())[balance.slot(symbol)];
  }

  /**
   * The mass to add so that a friction coefficient just suffices, kg; 0 if none is needed, -1 if
   * none helps.
   */
  public double ballast(double coefficient) {
    UnivariateFunction gap =
        mass ->
            value("T", weight + mass * SelfWeight.GRAVITY)
                - coefficient * value("N", weight + mass * SelfWeight.GRAVITY);
    if (gap.value(0) <= 0) {
      return 0;
    }
    if (gap.value(MOST_MASS) >= 0) {
      return -1;
    }
    double most = 1;
    while (gap.value(most) > 0) {
      most *= 2;
    }
    return new BrentSolver(MASS_ACCURACY, MASS_ACCURACY).solve(MOST_TRIES, gap, 0, most);
  }
}
