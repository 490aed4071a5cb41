package spanledger.joint.stiffness;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import spanledger.procedure.CompiledProcedure;

/**
 * One property of several specimens.
 *
 * @param specimens how many
 * @param mean of the specimens
 * @param variation coefficient of variation: of the specimens, or as known beforehand
 * @param lower characteristic value, 5 % fractile, not below zero
 * @param upper characteristic value, 95 % fractile
 */
public record MeasuredProperty(
    int specimens, double mean, double variation, double lower, double upper) {

  private static final CompiledProcedure NORMAL = CharacteristicValue.NORMAL.compile();
  private static final CompiledProcedure LOG_NORMAL = CharacteristicValue.LOG_NORMAL.compile();

  /**
   * Of a property that is above zero for every specimen; its logarithm is taken to scatter
   * normally.
   *
   * @param values of the specimens; not modified
   * @param knownVariation coefficient of variation, if it is known from earlier tests
   * @throws IllegalArgumentException if there are too few specimens
   */
  public static MeasuredProperty positive(double[] values, OptionalDouble knownVariation) {
    double[] logarithms = Arrays.stream(values).map(Math::log).toArray();
    double mean = new Mean().evaluate(values);
    double variation = knownVariation.orElseGet(() -> deviation(values) / mean);
    double deviation =
        knownVariation.isPresent()
            ? Math.sqrt(Math.log1p(variation * variation))
            : deviation(logarithms);
    return of(
        LOG_NORMAL,
        values.length,
        knownVariation,
        mean,
        variation,
        new Mean().evaluate(logarithms),
        deviation);
  }

  /**
   * Of a property that may be zero; it is taken to scatter normally.
   *
   * @param values of the specimens; not modified
   * @param knownVariation coefficient of variation, if it is known from earlier tests
   * @throws IllegalArgumentException if there are too few specimens
   */
  public static MeasuredProperty normal(double[] values, OptionalDouble knownVariation) {
    double mean = new Mean().evaluate(values);
    double deviation =
        knownVariation.isPresent() ? knownVariation.getAsDouble() * mean : deviation(values);
    double variation = mean > 0 ? deviation / mean : 0;
    return of(NORMAL, values.length, knownVariation, mean, variation, mean, deviation);
  }

  private static double deviation(double[] values) {
    return new StandardDeviation().evaluate(values);
  }

  private static MeasuredProperty of(
      CompiledProcedure procedure,
      int specimens,
      OptionalDouble knownVariation,
      double mean,
      double variation,
      double centre,
      double deviation) {
    double quantile = CharacteristicValue.quantile(specimens, knownVariation.isPresent());
    double[] values = procedure.run(specimens, quantile, centre, deviation);
    return new MeasuredProperty(
        specimens,
        mean,
        variation,
        Math.max(0, values[procedure.slot("X_low")]),
        values[procedure.slot("X_high")]);
  }
}
