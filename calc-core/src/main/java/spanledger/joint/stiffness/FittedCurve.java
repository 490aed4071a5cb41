package spanledger.joint.stiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import spanledger.joint.stiffness.MomentRotationCurve.Point;

/**
 * A test curve as three straight lines: play, in which nothing resists; a stiffness; and, if the
 * readings show it, a moment that is held.
 *
 * <p>Fitted by least squares of the moments, as long as the greatest is as good as held. The start
 * is the best of all ways to divide the readings between the three lines; from there the
 * Levenberg-Marquardt method ends at the optimum.
 *
 * @param specimen its name
 * @param play rotation before anything resists, rad
 * @param stiffness then, N·mm/rad
 * @param plasticMoment that is held, N·mm; none if the readings go on rising
 * @param scatter root of the mean square of what the lines miss, N·mm
 * @param readings how many were fitted
 */
public record FittedCurve(
    String specimen,
    double play,
    double stiffness,
    OptionalDouble plasticMoment,
    double scatter,
    int readings) {

  /** Places tried for the ends of the lines. */
  private static final int MOST_PLACES = 60;

  /**
   * Of the greatest moment: below this the lines meet the readings, and more lines mean nothing.
   */
  private static final double MET = 1e-9;

  /** By how much a third line must lower the scatter to be believed. Judgement, no source. */
  private static final double BELIEVED = 0.8;

  /** Fits a curve. */
  public static FittedCurve of(MomentRotationCurve curve) {
    List<Point> points = curve.held();
    double[] rotation = points.stream().mapToDouble(Point::rotation).toArray();
    double[] moment = points.stream().mapToDouble(Point::moment).toArray();
    double turnUnit = rotation[rotation.length - 1];
    double momentUnit = curve.greatestMoment();
    for (int i = 0; i < rotation.length; i++) {
      rotation[i] /= turnUnit;
      moment[i] /= momentUnit;
    }
    double[] two = optimum(rotation, moment, false);
    double[] three = optimum(rotation, moment, true);
    double missedByTwo = scatter(rotation, moment, two);
    boolean held = missedByTwo > MET && scatter(rotation, moment, three) < BELIEVED * missedByTwo;
    double[] best = held ? three : two;
    return new FittedCurve(
        curve.specimen(),
        best[0] * turnUnit,
        best[1] * momentUnit / turnUnit,
        held ? OptionalDouble.of(best[2] * momentUnit) : OptionalDouble.empty(),
        scatter(rotation, moment, best) * momentUnit,
        rotation.length);
  }

  /** The moment of the fitted lines at a rotation, N·mm. */
  public double moment(double rotation) {
    double[] lines = {play, stiffness, plasticMoment.orElse(Double.POSITIVE_INFINITY)};
    return value(lines, rotation);
  }

  private static double value(double[] lines, double rotation) {
    return Math.min(Math.max(0, lines[1] * (rotation - lines[0])), lines[2]);
  }

  private static double[] optimum(double[] rotation, double[] moment, boolean held) {
    double[] start = start(rotation, moment, held);
    int free = held ? 3 : 2;
    MultivariateJacobianFunction model =
        at -> {
          double[] lines = lines(at.toArray());
          double[] values = new double[rotation.length];
          double[][] slopes = new double[rotation.length][free];
          for (int i = 0; i < rotation.length; i++) {
            values[i] = value(lines, rotation[i]);
            double rising = lines[1] * (rotation[i] - lines[0]);
            if (rising > lines[2]) {
              slopes[i][2] = 1;
            } else if (rising > 0) {
              slopes[i][0] = -lines[1];
              slopes[i][1] = rotation[i] - lines[0];
            }
          }
          return new Pair<>(
              new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
        };
    Optimum found =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(java.util.Arrays.copyOf(start, free))
                    .model(model)
                    .parameterValidator(
                        at ->
                            new ArrayRealVector(java.util.Arrays.copyOf(lines(at.toArray()), free)))
                    .target(moment)
                    .maxEvaluations(1000)
                    .maxIterations(1000)
                    .build());
    double[] end = lines(found.getPoint().toArray());
    return scatter(rotation, moment, end) <= scatter(rotation, moment, start) ? end : start;
  }

  /** Play is never negative; a moment that is not held is never reached. */
  private static double[] lines(double[] free) {
    return new double[] {
      Math.max(0, free[0]), free[1], free.length > 2 ? free[2] : Double.POSITIVE_INFINITY
    };
  }

  private static double[] start(double[] rotation, double[] moment, boolean held) {
    double[] best = {0, 1, held ? 1 : Double.POSITIVE_INFINITY};
    double least = scatter(rotation, moment, best);
    List<Integer> places = places(rotation.length);
    for (int from : places) {
      for (int to : held ? places : List.of(rotation.length)) {
        if (to - from < 2) {
          continue;
        }
        double[] lines = line(rotation, moment, from, to);
        lines[2] = held ? mean(moment, to) : Double.POSITIVE_INFINITY;
        double missed = scatter(rotation, moment, lines);
        if (lines[1] > 0 && missed < least) {
          least = missed;
          best = lines;
        }
      }
    }
    return best;
  }

  private static List<Integer> places(int count) {
    List<Integer> places = new ArrayList<>();
    int steps = Math.min(count, MOST_PLACES);
    for (int i = 0; i <= steps; i++) {
      places.add((int) Math.round((double) i * count / steps));
    }
    return places;
  }

  /** The straight line through some readings, through the origin if it would cross before it. */
  private static double[] line(double[] rotation, double[] moment, int from, int to) {
    double turns = 0;
    double moments = 0;
    double squares = 0;
    double products = 0;
    for (int i = from; i < to; i++) {
      turns += rotation[i];
      moments += moment[i];
      squares += rotation[i] * rotation[i];
      products += rotation[i] * moment[i];
    }
    int count = to - from;
    double slope = (count * products - turns * moments) / (count * squares - turns * turns);
    double play = (turns - moments / slope) / count;
    return play >= 0 ? new double[] {play, slope, 0} : new double[] {0, products / squares, 0};
  }

  private static double mean(double[] moment, int from) {
    if (from >= moment.length) {
      return moment[moment.length - 1];
    }
    double sum = 0;
    for (int i = from; i < moment.length; i++) {
      sum += moment[i];
    }
    return sum / (moment.length - from);
  }

  private static double scatter(double[] rotation, double[] moment, double[] lines) {
    double sum = 0;
    for (int i = 0; i < rotation.length; i++) {
      double missed = moment[i] - value(lines, rotation[i]);
      sum += missed * missed;
    }
    return Math.sqrt(sum / rotation.length);
  }
}
