package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.exp;
import static spanledger.procedure.Formulas.ln;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Characteristic values, 5 % and 95 % fractiles, of a property measured on several specimens.
 *
 * <p>Inputs x_1 to x_n (the specimens), t (one-sided 95 % quantile: of Student's distribution with
 * n - 1 degrees where the scatter is estimated from the specimens, of the normal one where it is
 * known) and V_X (coefficient of variation known beforehand, else the least that is reckoned with);
 * steps m, s and V where the scatter is estimated; m_y and s_y of the logarithms where those
 * scatter normally; s_X (the deviation that counts), k_n, X_low, X_high.
 */
public final class CharacteristicValue {

  /** How a property scatters. */
  public enum Scatter {
    /** Normally; for one that may be zero. Its lower value is never below zero. */
    NORMAL,
    /** Its logarithm scatters normally; for one that is above zero. */
    LOG_NORMAL
  }

  /** The least coefficient of variation where it is not known beforehand. */
  public static final double LEAST_VARIATION = 0.10;

  /** Where that comes from. */
  public static final Source LEAST_SOURCE =
      Source.fromMemory("EN 1990:2002", "Annex D, D.7.1(5), note");

  /** Where the quantile comes from. */
  public static final Source QUANTILE_SOURCE =
      Source.derived(
          "0.95 quantile of Student's distribution with n - 1 degrees (scatter of the specimens) or"
              + " of the normal one (scatter known)");

  /** Moments of three specimens, scatter unknown; a constant, so that docs/sources.md lists it. */
  public static final Procedure THREE_MOMENTS = of(3, Dimension.MOMENT, Scatter.LOG_NORMAL, false);

  /** Plays of three specimens, scatter unknown; a constant for the same reason. */
  public static final Procedure THREE_PLAYS = of(3, Dimension.NONE, Scatter.NORMAL, false);

  private static final double FRACTILE = 0.95;

  /** Fewer do not show their own scatter; EN 1990, Table D.1, begins there. */
  public static final int FEWEST = 3;

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

  /**
   * The definition.
   *
   * @param specimens how many, at least one
   * @param dimension of the property: a moment, or none
   * @param scatterKnown whether the coefficient of variation is known beforehand
   */
  public static Procedure of(
      int specimens, Dimension dimension, Scatter scatter, boolean scatterKnown) {
    boolean logarithmic = scatter == Scatter.LOG_NORMAL;
    Procedure.Builder p =
        Procedure.named(
            "characteristic-value-"
                + (logarithmic ? "log-normal-" : "normal-")
                + (scatterKnown ? "known-" : "")
                + specimens
                + (dimension.isNone() ? "" : "-moments"),
            "Characteristic values of "
                + specimens
                + (specimens == 1 ? " specimen" : " specimens")
                + (logarithmic ? ", log-normal" : ", normal")
                + (scatterKnown ? ", scatter known" : ""));
    List<Reference> values = new ArrayList<>();
    for (int i = 1; i <= specimens; i++) {
      values.add(
          p.input(
              "x_" + i,
              "specimen " + i,
              dimension,
              logarithmic ? Domain.POSITIVE : Domain.NOT_NEGATIVE));
    }
    Reference quantile = p.input("t", "quantile", Dimension.NONE, Domain.POSITIVE);
    Reference variation =
        p.input(
            "V_X",
            scatterKnown
                ? "coefficient of variation, known beforehand"
                : "least coefficient of variation reckoned with",
            Dimension.NONE,
            Domain.NOT_NEGATIVE);
    Reference mean = mean(p, "m", "mean", dimension, values, x -> x);
    if (!scatterKnown) {
      Reference own = deviation(p, "s", "standard deviation", dimension, values, mean, x -> x);
      p.step(
          "V",
          "coefficient of variation of the specimens",
          Dimension.NONE,
          own.over(max(mean, constant(1e-12, dimension))),
          StiffnessSources.TESTS);
      return logarithmic
          ? logarithms(p, values, quantile, variation, dimension, false)
          : straight(p, mean, max(own, variation.times(mean)), quantile, specimens, dimension);
    }
    return logarithmic
        ? logarithms(p, values, quantile, variation, dimension, true)
        : straight(p, mean, variation.times(mean), quantile, specimens, dimension);
  }

  private static Procedure straight(
      Procedure.Builder p,
      Reference mean,
      Expression counts,
      Reference quantile,
      int specimens,
      Dimension dimension) {
    Reference deviation =
        p.step("s_X", "standard deviation that counts", dimension, counts, StiffnessSources.TESTS);
    Reference factor = factor(p, quantile, specimens);
    p.step(
        "X_low",
        "lower characteristic value, not below zero",
        dimension,
        max(mean.minus(factor.times(deviation)), constant(0, dimension)),
        StiffnessSources.TESTS);
    p.step(
        "X_high",
        "upper characteristic value",
        dimension,
        mean.plus(factor.times(deviation)),
        StiffnessSources.TESTS);
    return p.build();
  }

  private static Procedure logarithms(
      Procedure.Builder p,
      List<Reference> values,
      Reference quantile,
      Reference variation,
      Dimension dimension,
      boolean scatterKnown) {
    Expression unit = constant(1, dimension);
    UnaryOperator<Expression> logarithm = x -> ln(x.over(unit));
    Reference mean = mean(p, "m_y", "mean of the logarithms", Dimension.NONE, values, logarithm);
    Expression ofVariation = sqrt(ln(number(1).plus(variation.pow(2))));
    Expression counts = ofVariation;
    if (!scatterKnown) {
      Reference own =
          deviation(
              p,
              "s_y",
              "standard deviation of the logarithms",
              Dimension.NONE,
              values,
              mean,
              logarithm);
      counts = max(own, ofVariation);
    }
    Reference deviation =
        p.step(
            "s_X",
            "standard deviation of the logarithms that counts",
            Dimension.NONE,
            counts,
            StiffnessSources.TESTS);
    Reference factor = factor(p, quantile, values.size());
    p.step(
        "X_low",
        "lower characteristic value",
        dimension,
        unit.times(exp(mean.minus(factor.times(deviation)))),
        StiffnessSources.TESTS);
    p.step(
        "X_high",
        "upper characteristic value",
        dimension,
        unit.times(exp(mean.plus(factor.times(deviation)))),
        StiffnessSources.TESTS);
    return p.build();
  }

  private static Reference factor(Procedure.Builder p, Reference quantile, int specimens) {
    return p.step(
        "k_n",
        "factor of the scatter",
        Dimension.NONE,
        quantile.times(sqrt(number(1).plus(number(1).over(specimens)))),
        StiffnessSources.TESTS);
  }

  private static Reference mean(
      Procedure.Builder p,
      String symbol,
      String words,
      Dimension dimension,
      List<Reference> values,
      UnaryOperator<Expression> each) {
    Expression sum = each.apply(values.get(0));
    for (int i = 1; i < values.size(); i++) {
      sum = sum.plus(each.apply(values.get(i)));
    }
    return p.step(symbol, words, dimension, sum.over(values.size()), StiffnessSources.TESTS);
  }

  private static Reference deviation(
      Procedure.Builder p,
      String symbol,
      String words,
      Dimension dimension,
      List<Reference> values,
      Reference mean,
      UnaryOperator<Expression> each) {
    Expression sum = each.apply(values.get(0)).minus(mean).pow(2);
    for (int i = 1; i < values.size(); i++) {
      sum = sum.plus(each.apply(values.get(i)).minus(mean).pow(2));
    }
    return p.step(
        symbol, words, dimension, sqrt(sum.over(values.size() - 1.0)), StiffnessSources.TESTS);
  }
}
