package spanledger.joint.stiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What one specimen of a joint did in a test: moments over rotations, in one direction.
 *
 * @param specimen its name
 * @param points in the order measured
 */
public record MomentRotationCurve(String specimen, List<Point> points) {

  /** Fewer give no fit worth the name. Common practice, no source. */
  private static final int FEWEST = 5;

  /**
   * How far the moment may fall back, per its greatest, before the test is taken to be unloaded.
   */
  private static final double DIP = 0.05;

  /**
   * One reading.
   *
   * @param rotation rad
   * @param moment N·mm
   */
  public record Point(double rotation, double moment) {}

  /**
   * @throws BadCurveException if it cannot be a test of a joint, naming all that is wrong
   */
  public MomentRotationCurve {
    points = List.copyOf(points);
    List<String> problems = problems(points);
    if (!problems.isEmpty()) {
      throw new BadCurveException(specimen, problems);
    }
  }

  /** The readings to fit: up to the last at which the greatest moment is as good as held. */
  public List<Point> held() {
    return points.subList(0, lastHeld(points) + 1);
  }

  /** The greatest moment, N·mm. */
  public double greatestMoment() {
    return points.get(peak(points)).moment();
  }

  /** The rotation at the greatest moment, rad. */
  public double rotationAtGreatest() {
    return points.get(peak(points)).rotation();
  }

  /**
   * Moment per rotation from the start to where the curve first reaches a moment, N·mm/rad; none if
   * it does not.
   */
  public OptionalDouble secantStiffness(double moment) {
    Point before = new Point(0, 0);
    for (Point point : points) {
      if (point.moment() >= moment) {
        double rise = point.moment() - before.moment();
        double part = rise > 0 ? (moment - before.moment()) / rise : 1;
        double rotation = before.rotation() + part * (point.rotation() - before.rotation());
        return rotation > 0 ? OptionalDouble.of(moment / rotation) : OptionalDouble.empty();
      }
      before = point;
    }
    return OptionalDouble.empty();
  }

  private static int peak(List<Point> points) {
    int peak = 0;
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).moment() > points.get(peak).moment()) {
        peak = i;
      }
    }
    return peak;
  }

  private static int lastHeld(List<Point> points) {
    double held = (1 - DIP) * points.get(peak(points)).moment();
    int last = peak(points);
    while (last + 1 < points.size() && points.get(last + 1).moment() >= held) {
      last++;
    }
    return last;
  }

  private static List<String> problems(List<Point> points) {
    List<String> problems = new ArrayList<>();
    if (points.size() < FEWEST) {
      problems.add("has " + points.size() + " readings, but needs at least " + FEWEST);
    }
    if (points.isEmpty()) {
      return problems;
    }
    boolean finite = true;
    for (int i = 0; i < points.size(); i++) {
      if (!Double.isFinite(points.get(i).rotation()) || !Double.isFinite(points.get(i).moment())) {
        problems.add("reading " + (i + 1) + " is not a pair of finite numbers");
        finite = false;
      }
    }
    if (finite) {
      addShape(problems, points);
    }
    return problems;
  }

  private static void addShape(List<String> problems, List<Point> points) {
    double greatest = points.get(peak(points)).moment();
    if (!(greatest > 0) || points.get(0).rotation() < 0) {
      problems.add(
          "must go towards positive rotation and moment; turn the signs of both, and begin at zero");
      return;
    }
    double reached = 0;
    for (int i = 0; i < points.size(); i++) {
      Point point = points.get(i);
      if (i > 0 && point.rotation() <= points.get(i - 1).rotation()) {
        problems.add(
            "reading "
                + (i + 1)
                + " has a rotation of "
                + point.rotation()
                + " rad, not above "
                + points.get(i - 1).rotation()
                + " rad before it; leave out unloading and repeated readings");
      }
      if (i < peak(points) && point.moment() < reached - DIP * greatest) {
        problems.add(
            "reading "
                + (i + 1)
                + " has a moment of "
                + Math.round(point.moment())
                + " N·mm, well below "
                + Math.round(reached)
                + " N·mm reached before it; leave out unloading");
      }
      reached = Math.max(reached, point.moment());
    }
    if (points.size() >= FEWEST && lastHeld(points) + 1 < FEWEST) {
      problems.add(
          "falls from its greatest moment after reading "
              + (lastHeld(points) + 1)
              + ", but a fit needs at least "
              + FEWEST
              + " readings up to there");
    }
  }
}
