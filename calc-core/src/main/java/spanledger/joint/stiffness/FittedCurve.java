package spanledger.joint.stiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spanledger.joint.stiffness.MomentRotationCurve.Point;
import spanledger.procedure.CompiledProcedure;

/**
 * A test curve as three straight lines: play, in which nothing resists; a stiffness; and, if the
 * readings show it, a moment that is held.
 *
 * <p>The readings are divided between the three lines; the rising one is laid by {@link TestLine}
 * through its own readings, the held one at the mean of its own by {@link TestHeld}. Of all
 * divisions that counts whose lines miss the readings least, root mean square of the moments, as
 * long as the greatest is as good as held.
 *
 * @param specimen its name
 * @param play rotation before anything resists, rad
 * @param stiffness then, N·mm/rad
 * @param plasticMoment that is held, N·mm; none if the readings go on rising
 * @param resisted the moment that the specimen resists, N·mm
 * @param scatter root of the mean square of what the lines miss, N·mm
 * @param readings how many were fitted
 * @param division which of them belong to which line
 */
public record FittedCurve(
    String specimen,
    double play,
    double stiffness,
    OptionalDouble plasticMoment,
    double resisted,
    double scatter,
    int readings,
    Division division) {

  /**
   * Which readings rise; those before are in the play, those behind are held.
   *
   * @param from the first that rises, from 0
   * @param to the first that is held; the number of readings if none is
   */
  public record Division(int from, int to) {}

  /** The lines of one division. */
  private record Lines(Division division, double play, double slope, double held, double missed) {}

  /** Places tried for the ends of the lines at first. */
  private static final int MOST_PLACES = 60;

  /**
   * Of the greatest moment: below this the lines meet the readings, and more lines mean nothing.
   */
  private static final double MET = 1e-9;

  /** By how much a third line must lower the scatter to be believed. Judgement, no source. */
  private static final double BELIEVED = 0.8;

  private static final CompiledProcedure LINE = TestLine.PROCEDURE.compile();
  private static final CompiledProcedure HELD = TestHeld.PROCEDURE.compile();
  private static final CompiledProcedure FIT = TestFit.PROCEDURE.compile();
  private static final int PLAY = LINE.slot("φ_0");
  private static final int SLOPE = LINE.slot("k_φ");
  private static final int MISSED = FIT.slot("e");

  /** Fits a curve. */
  public static FittedCurve of(MomentRotationCurve curve) {
    List<Point> points = curve.held();
    double greatest = curve.greatestMoment();
    Lines two = best(points, greatest, false);
    Lines three = best(points, greatest, true);
    boolean held = two.missed > MET * greatest && three.missed < BELIEVED * two.missed;
    Lines best = held ? three : two;
    double[] moment = held(TestSums.of(points, best.division), greatest);
    return new FittedCurve(
        curve.specimen(),
        best.play,
        best.slope,
        held ? OptionalDouble.of(moment[HELD.slot("M_h")]) : OptionalDouble.empty(),
        moment[HELD.slot("M_R")],
        best.missed,
        points.size(),
        best.division);
  }

  /** The moment of the fitted lines at a rotation, N·mm. */
  public double moment(double rotation) {
    int count = plasticMoment.isPresent() ? readings - division.to : 0;
    return FIT.run(rotation, 0, play, stiffness, count, plasticMoment.orElse(0))[FIT.slot("M_f")];
  }

  private static Lines best(List<Point> points, double greatest, boolean held) {
    int count = points.size();
    Lines best = new Lines(new Division(0, count), 0, 0, 0, Double.POSITIVE_INFINITY);
    List<Integer> places = places(count);
    for (int from : places) {
      for (int to : held ? places : List.of(count)) {
        best = better(best, points, greatest, new Division(from, to), held);
      }
    }
    Lines before;
    do {
      before = best;
      best = better(best, points, greatest, asLinesSay(points, best, held), held);
      for (int from = -1; from <= 1; from++) {
        for (int to = held ? -1 : 0; to <= (held ? 1 : 0); to++) {
          Division near = new Division(before.division.from + from, before.division.to + to);
          best = better(best, points, greatest, near, held);
        }
      }
    } while (best.missed < before.missed);
    return best;
  }

  /** The division in which every reading belongs to the line that it is beside. */
  private static Division asLinesSay(List<Point> points, Lines lines, boolean held) {
    int from = 0;
    int to = points.size();
    while (from < points.size() && points.get(from).rotation() <= lines.play) {
      from++;
    }
    while (held
        && to > from
        && lines.slope * (points.get(to - 1).rotation() - lines.play) >= lines.held) {
      to--;
    }
    return new Division(from, to);
  }

  private static Lines better(
      Lines best, List<Point> points, double greatest, Division division, boolean held) {
    int most = held ? points.size() - 1 : points.size();
    if (division.from < 0 || division.to > most || division.to - division.from < 2) {
      return best;
    }
    Lines lines = lines(points, greatest, division);
    boolean rises = lines.slope > 0 && lines.play >= 0 && Double.isFinite(lines.missed);
    return rises && !(lines.missed >= best.missed) ? lines : best;
  }

  private static Lines lines(List<Point> points, double greatest, Division division) {
    TestSums sums = TestSums.of(points, division);
    double[] values = LINE.newSlots();
    values[0] = sums.rising();
    values[1] = sums.rotations();
    values[2] = sums.moments();
    values[3] = sums.squares();
    values[4] = sums.products();
    LINE.evaluate(values);
    double play = values[PLAY];
    double slope = values[SLOPE];
    double held = held(sums, greatest)[HELD.slot("M_h")];
    double[] fit = FIT.newSlots();
    double sum = 0;
    for (Point point : points) {
      fit[0] = point.rotation();
      fit[1] = point.moment();
      fit[2] = play;
      fit[3] = slope;
      fit[4] = sums.held();
      fit[5] = held;
      FIT.evaluate(fit);
      sum += fit[MISSED] * fit[MISSED];
    }
    return new Lines(division, play, slope, held, Math.sqrt(sum / points.size()));
  }

  private static double[] held(TestSums sums, double greatest) {
    return HELD.run(greatest, sums.held(), sums.heldMoments());
  }

  private static List<Integer> places(int count) {
    List<Integer> places = new ArrayList<>();
    int steps = Math.min(count, MOST_PLACES);
    for (int i = 0; i <= steps; i++) {
      places.add((int) Math.round((double) i * count / steps));
    }
    return places;
  }
}
