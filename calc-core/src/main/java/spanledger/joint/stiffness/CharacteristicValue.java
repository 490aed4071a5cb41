package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.exp;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Characteristic values, 5 % and 95 % fractiles, of a property measured on several specimens; given
 * as pure numbers of any one unit.
 *
 * <p>Inputs n, t (one-sided 95 % quantile: of Student's distribution with n - 1 degrees where the
 * scatter is estimated from the specimens, of the normal one where it is known), m (mean) and s
 * (standard deviation), of the property or of its natural logarithm; steps k_n, X_low, X_high.
 */
public final class CharacteristicValue {

  /** Of a property that scatters normally. */
  public static final Procedure NORMAL = procedure(false);

  /** Of a property that is never negative: its logarithm scatters normally. */
  public static final Procedure LOG_NORMAL = procedure(true);

  private static final double FRACTILE = 0.95;

  /** Fewer do not show their own scatter; EN 1990, Table D.1, begins there. */
  private static final int FEWEST = 3;

  private CharacteristicValue() {}

  /**
   * The quantile on which k_n rests.
   *
   * @param specimens how many
   * @param scatterKnown whether the coefficient of variation is known beforehand
   * @throws IllegalArgumentException if there are too few specimens to show their own scatter
   */
  public static double quantile(int specimens, boolean scatterKnown) {
    if (scatterKnown && specimens >= 1) {
      return new NormalDistribution().inverseCumulativeProbability(FRACTILE);
    }
    if (specimens < FEWEST) {
      throw new IllegalArgumentException(
          "The scatter of "
              + specimens
              + " specimens cannot be estimated; test at least "
              + FEWEST
              + ", or give the coefficient of variation if it is known from earlier tests.");
    }
    return new TDistribution(specimens - 1).inverseCumulativeProbability(FRACTILE);
  }

  private static Procedure procedure(boolean logarithmic) {
    String of = logarithmic ? " of the logarithms" : "";
    Procedure.Builder p =
        Procedure.named(
            logarithmic ? "characteristic-value-log-normal" : "characteristic-value",
            "Characteristic values from tests" + (logarithmic ? ", log-normal" : ""));
    Reference count = p.input("n", "specimens", Dimension.NONE, Domain.POSITIVE);
    Reference quantile = p.input("t", "quantile", Dimension.NONE, Domain.POSITIVE);
    Reference mean = p.input("m", "mean" + of, Dimension.NONE);
    Reference deviation =
        p.input("s", "standard deviation" + of, Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference factor =
        p.step(
            "k_n",
            "factor of the scatter",
            Dimension.NONE,
            quantile.times(sqrt(number(1).plus(number(1).over(count)))),
            StiffnessSources.TESTS);
    var low = mean.minus(factor.times(deviation));
    var high = mean.plus(factor.times(deviation));
    p.step(
        "X_low",
        "lower characteristic value",
        Dimension.NONE,
        logarithmic ? exp(low) : low,
        StiffnessSources.TESTS);
    p.step(
        "X_high",
        "upper characteristic value",
        Dimension.NONE,
        logarithmic ? exp(high) : high,
        StiffnessSources.TESTS);
    return p.build();
  }
}
